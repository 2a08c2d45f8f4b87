#include "cases/process.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <system_error>

namespace cases {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void fail(const std::string& what) {
  throw std::system_error(errno, std::generic_category(), what);
}

std::vector<char*> pointers(std::vector<std::string>& texts) {
  std::vector<char*> result;
  for (std::string& text : texts) result.push_back(text.data());
  result.push_back(nullptr);
  return result;
}

// Sanitizers are told by these; all else of the machine stays outside.
void keep(const char* name, std::vector<std::string>& environment) {
  const char* value = std::getenv(name);
  if (value != nullptr) environment.push_back(std::string(name) + "=" + value);
}

std::vector<std::string> environment_of(const Job& job) {
  const std::string home = job.folder.string();
  std::vector<std::string> environment{"TZ=UTC",
                                       "LC_ALL=C",
                                       "TERM=dumb",
                                       "HOME=" + home,
                                       "PATH=" + job.path,
                                       "XDG_STATE_HOME=" + home + "/state",
                                       "COLUMNS=80",
                                       "XDG_DATA_HOME=" + home + "/data",
                                       "TIMEWORN_BOOK=book.db"};
  keep("ASAN_OPTIONS", environment);
  keep("UBSAN_OPTIONS", environment);
  keep("LSAN_OPTIONS", environment);
  return environment;
}

int open_or_fail(const fs::path& path, int flags) {
  const int file = ::open(path.c_str(), flags, 0600);
  if (file < 0) fail(path.string());
  return file;
}

// Only what may be called between fork and exec.
[[noreturn]] void become(const Job& job, char** words, char** environment, const int (&files)[3]) {
  for (int i = 0; i < 3; ++i) {
    if (::dup2(files[i], i) < 0) ::_exit(126);
  }
  if (::chdir(job.folder.c_str()) == 0) ::execve(words[0], words, environment);
  ::_exit(127);
}

int wait_for(pid_t child) {
  int status = 0;
  while (::waitpid(child, &status, 0) < 0) {
    if (errno != EINTR) fail("waitpid");
  }
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

}  // namespace

// Files instead of pipes: nothing can fill up and stand still.
Outcome run(const Job& job) {
  const ScratchFolder streams;
  const fs::path in = streams.path() / "in";
  const fs::path out = streams.path() / "out";
  const fs::path err = streams.path() / "err";
  write_file(in, job.input);
  constexpr int writing = O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC;
  const int files[3] = {open_or_fail(in, O_RDONLY | O_CLOEXEC), open_or_fail(out, writing),
                        open_or_fail(job.streams == Streams::together ? out : err, writing)};
  std::vector<std::string> words = job.words;
  std::vector<std::string> environment = environment_of(job);
  const auto word_pointers = pointers(words);
  const auto environment_pointers = pointers(environment);

  const pid_t child = ::fork();
  if (child < 0) fail("fork");
  if (child == 0) {
    become(job, const_cast<char**>(word_pointers.data()),
           const_cast<char**>(environment_pointers.data()), files);
  }
  for (const int file : files) ::close(file);
  Outcome outcome;
  outcome.exit = wait_for(child);
  outcome.out = file_text(out);
  outcome.err = file_text(err);
  return outcome;
}

ScratchFolder::ScratchFolder() {
  std::string name = (fs::temp_directory_path() / "timeworn-case-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) fail(name);
  path_ = name;
}

ScratchFolder::~ScratchFolder() {
  std::error_code ignored;
  fs::remove_all(path_, ignored);
}

std::string file_text(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void write_file(const fs::path& path, const std::string& text) {
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file << text;
  file.close();
  if (!file) fail(path.string());
}

}  // namespace cases
