#!/bin/sh
# SPDX-License-Identifier: EPL-2.0
# Opens the window by a double click in the Finder.
exec "$(dirname -- "$0")/pitchstack" "$@"
