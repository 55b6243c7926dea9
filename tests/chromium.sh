#!/bin/sh
# Finds a Chromium for the browser tests, or installs Debian's, with pdftotext, strace and certutil where they are missing.
# Prints the path of the Chromium. LOGBOOK_CHROMIUM, where set, names the one to use.
set -eu
found=""
for one in "${LOGBOOK_CHROMIUM:-}" chromium chromium-browser google-chrome; do
  if [ -n "$one" ] && [ -z "$found" ]; then found=$(command -v "$one" || true); fi
done
wanted=""
[ -n "$found" ] || wanted="chromium"
command -v pdftotext >/dev/null || wanted="$wanted poppler-utils"
command -v strace >/dev/null || wanted="$wanted strace"
command -v certutil >/dev/null || wanted="$wanted libnss3-tools"
if [ -n "$wanted" ]; then
  if ! command -v apt-get >/dev/null; then
    echo "Missing: $wanted. This is no Debian: install them, or name a browser in LOGBOOK_CHROMIUM. Nothing was changed." >&2
    exit 2
  fi
  as_root=""
  [ "$(id -u)" = 0 ] || as_root=sudo
  $as_root apt-get update -qq >&2
  # shellcheck disable=SC2086
  DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends $wanted >&2
fi
[ -n "$found" ] || found=$(command -v chromium)
echo "$found"
