// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the sounds of the spray stage, off the GUI thread. Without an audio device it is silent and says so
// when asked; nothing else changes.
#pragma once

#include "ui/spray/spray_sound.h"

#include <condition_variable>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

namespace sealwalk::ui {

class SoundPlayer
{
public:
    enum class Device
    {
        Untried,
        Works,
        Missing
    };

    /// @param device  the name of an ALSA output
    explicit SoundPlayer(std::string device = "default");
    ~SoundPlayer();
    SoundPlayer(const SoundPlayer&) = delete;
    SoundPlayer& operator=(const SoundPlayer&) = delete;

    /// Returns at once. A sound that has not begun when the next one comes is left out.
    void play(SpraySound sound);
    /// What the last attempt found.
    [[nodiscard]] Device device() const;

private:
    void run();

    const std::string m_name;
    mutable std::mutex m_mutex;
    std::condition_variable m_wake;
    std::optional<SpraySound> m_next;
    Device m_device = Device::Untried;
    bool m_ends = false;
    std::thread m_thread; // last: it uses all of the above
};

} // namespace sealwalk::ui
