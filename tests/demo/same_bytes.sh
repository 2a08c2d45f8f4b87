#!/bin/sh
# same_bytes.sh PYTHON FOLDER: the maker of the story writes the bytes, and the table, on file.
set -eu
"$1" "$2/story/make.py" | cmp - "$2/story.record"
"$1" "$2/story/table.py" | while IFS= read -r row; do
  grep -qxF -- "$row" "$2/README.md" || { echo "README.md lacks: $row"; exit 1; }
done
