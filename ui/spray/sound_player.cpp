// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/sound_player.h"

#include "ui/spray/tones.h"

#include <alsa/asoundlib.h>

#include <memory>
#include <vector>

namespace sealwalk::ui {

namespace {

constexpr unsigned kLatencyMicroseconds = 60'000;

struct CloseDevice
{
    void operator()(snd_pcm_t* device) const { snd_pcm_close(device); }
};

/// The library writes to stderr whatever it fails at; a machine without sound is no fault.
void keepQuiet(const char* /*file*/, int /*line*/, const char* /*function*/, int /*error*/,
               const char* /*format*/, ...)
{}

/// False when the device cannot be had or does not take the samples.
bool playOn(const std::string& name, const std::vector<std::int16_t>& samples)
{
    snd_pcm_t* opened = nullptr;
    if (snd_pcm_open(&opened, name.c_str(), SND_PCM_STREAM_PLAYBACK, 0) < 0)
        return false;
    const std::unique_ptr<snd_pcm_t, CloseDevice> device(opened);
    constexpr int kResample = 1;
    if (snd_pcm_set_params(device.get(), SND_PCM_FORMAT_S16, SND_PCM_ACCESS_RW_INTERLEAVED, 1, kSampleRate,
                           kResample, kLatencyMicroseconds) < 0)
        return false;
    std::size_t played = 0;
    while (played < samples.size()) {
        const snd_pcm_sframes_t taken =
            snd_pcm_writei(device.get(), samples.data() + played, samples.size() - played);
        if (taken >= 0)
            played += static_cast<std::size_t>(taken);
        else if (snd_pcm_recover(device.get(), static_cast<int>(taken), 1) < 0)
            return false;
    }
    return snd_pcm_drain(device.get()) >= 0;
}

} // namespace

SoundPlayer::SoundPlayer(std::string device)
    : m_name(std::move(device))
    , m_thread([this] { run(); })
{
    snd_lib_error_set_handler(keepQuiet);
}

SoundPlayer::~SoundPlayer()
{
    {
        const std::scoped_lock lock(m_mutex);
        m_ends = true;
    }
    m_wake.notify_one();
    m_thread.join(); // at most one sound long
}

void SoundPlayer::play(SpraySound sound)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_next = sound;
    }
    m_wake.notify_one();
}

SoundPlayer::Device SoundPlayer::device() const
{
    const std::scoped_lock lock(m_mutex);
    return m_device;
}

void SoundPlayer::run()
{
    std::unique_lock lock(m_mutex);
    while (!m_ends) {
        m_wake.wait(lock, [this] { return m_ends || m_next; });
        if (m_ends || !m_next)
            continue;
        const SpraySound sound = *m_next;
        m_next.reset();
        lock.unlock();
        // Opened for each sound: a headset may come and go during a round.
        const bool played = playOn(m_name, samplesOf(sound));
        lock.lock();
        m_device = played ? Device::Works : Device::Missing;
    }
}

} // namespace sealwalk::ui
