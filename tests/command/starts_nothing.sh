#!/bin/sh
# starts_nothing.sh OBJECT…: what the program is made of can start no other program and reach no
# network: it does not even name the functions for it. (An answer that is paged or mailed by a child
# process would hand on the environment, and what is typed would meet a shell.)
set -eu
names='(execl|execle|execlp|execv|execve|execvp|execvpe|fexecve|fork|vfork|clone|system|popen|posix_spawn|posix_spawnp|socket|connect)'
named=$(nm --undefined-only "$@")
if printf '%s\n' "$named" | grep -E " U $names\$"; then
  echo "the program names what it must not use"
  exit 1
fi
# The list was read: the book's door and the mark's are named.
printf '%s\n' "$named" | grep -q ' U sqlite3_open_v2$'
printf '%s\n' "$named" | grep -q ' U flock$'
