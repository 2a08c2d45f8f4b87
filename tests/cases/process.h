// cases/process.h: runs the built program in a folder of its own, with nothing of the machine
// around it: no terminal, no settings, no book of a person.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace cases {

struct Outcome {
  int exit = -1;  // 128 + the signal's number if one ended it
  std::string out;
  std::string err;  // empty where both were read together
};

enum class Streams { apart, together };

// What is run: words[0] is the file. Input is given on standard input, which is never a terminal.
struct Job {
  std::vector<std::string> words;
  std::string input;
  std::filesystem::path folder;  // the working folder, and home of all that the program keeps
  std::string path;              // PATH for the job
  Streams streams = Streams::apart;
};

// Throws std::system_error if the file cannot be started.
Outcome run(const Job& job);

// A fresh folder that goes when this goes.
class ScratchFolder {
 public:
  ScratchFolder();
  ~ScratchFolder();
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

std::string file_text(const std::filesystem::path& path);  // empty if there is none
void write_file(const std::filesystem::path& path, const std::string& text);

}  // namespace cases
