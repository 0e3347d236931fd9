// SPDX-License-Identifier: GPL-3.0-or-later
// A detector that writes a line every hundredth of a second into a named pipe: first-order response to
// helium, which the test gives and takes.
#pragma once

#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTimer>

#include <string>

namespace sealwalk::tests {

class FedDetector
{
public:
    FedDetector();
    ~FedDetector();
    FedDetector(const FedDetector&) = delete;
    FedDetector& operator=(const FedDetector&) = delete;

    [[nodiscard]] const std::string& pipe() const { return m_pipe; }
    /// Starts talking, once somebody reads; stops by going away.
    void talk();
    void goAway();

    double background = 1e-10; ///< mbar·l/s
    double leak = 0.0;         ///< what helium adds in the end, mbar·l/s
    bool helium = false;
    double tau = 0.1; ///< s

private:
    void say();

    QTemporaryDir m_folder;
    std::string m_pipe;
    int m_descriptor = -1;
    QTimer m_timer;
    QElapsedTimer m_since;
    double m_signal = 0.0;
};

} // namespace sealwalk::tests
