# SPDX-License-Identifier: GPL-3.0-or-later
# What a bare Debian 12 needs; sourced by tests/run and demo/run. Reasons stand in DEVELOPERS.md.

BUILD_PACKAGES="cmake ninja-build g++ pkg-config ccache mold
  qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev qt6-pdf-dev qt6-serialport-dev
  qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools qt6-translations-l10n
  libsqlite3-dev libsqlitecpp-dev libeigen3-dev nlohmann-json3-dev libsodium-dev
  libxlsxwriter-dev libasound2-dev libcli11-dev libfmt-dev libexpected-dev libzip-dev
  libgtest-dev libgmock-dev libbenchmark-dev
  fonts-b612 fonts-dejavu-core"

TEST_PACKAGES="xvfb xauth xdotool openbox x11-utils imagemagick poppler-utils qpdf sqlite3 units unzip
  dbus at-spi2-core python3 python3-pyatspi gir1.2-atspi-2.0 libglib2.0-bin python3-scipy python3-openpyxl
  libxml2-utils locales clang-format clang-tidy procps"

# Installs what is missing of the packages named; asks for nothing, needs root or sudo only when something is missing.
install_missing() {
  local missing="" name
  for name in "$@"; do
    [ "$(dpkg-query -W -f='${Status}' "$name" 2>/dev/null)" = "install ok installed" ] || missing="$missing $name"
  done
  [ -z "$missing" ] && return 0
  local as=""
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "these packages are missing and need root to install:$missing" >&2; return 3; }
    as=sudo
  fi
  echo "installing:$missing"
  $as env DEBIAN_FRONTEND=noninteractive apt-get update -qq
  # shellcheck disable=SC2086
  $as env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null
}
