#!/bin/sh
# Finds a Chromium for the browser tests, or installs Debian's. Prints its path.
# LOGBOOK_CHROMIUM, where set, names the one to use.
set -eu
for one in "${LOGBOOK_CHROMIUM:-}" chromium chromium-browser google-chrome; do
  [ -n "$one" ] && command -v "$one" && exit 0
done
as_root=""
[ "$(id -u)" = 0 ] || as_root=sudo
if ! command -v apt-get >/dev/null; then
  echo "No Chromium was found and this is no Debian: install one, or name it in LOGBOOK_CHROMIUM. Nothing was changed." >&2
  exit 2
fi
$as_root apt-get update -qq >&2
DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends chromium poppler-utils strace >&2
command -v chromium
