#include "together/program.h"

#include <sys/wait.h>

namespace together {

Started::Started(const faults::Clerk& clerk, const std::string& script) {
  const std::string folder = "'" + clerk.folder() + "'";
  const std::string line = "export HOME=" + folder + " XDG_STATE_HOME=" + folder + "/state " +
                           "XDG_CONFIG_HOME=" + folder + " TIMEWORN_BOOK=" + folder +
                           "/the.book; " +
                           "timeworn() { '" TIMEWORN_PROGRAM "' \"$@\"; }; exec 2>&1; " + script;
  pipe_ = ::popen(line.c_str(), "r");
}

Started::~Started() {
  if (pipe_ != nullptr) ::pclose(pipe_);
}

Ended Started::ended() {
  Ended ended;
  for (int c = std::fgetc(pipe_); c != EOF; c = std::fgetc(pipe_)) {
    ended.printed += static_cast<char>(c);
  }
  const int status = ::pclose(pipe_);
  pipe_ = nullptr;
  ended.code = WIFEXITED(status) ? WEXITSTATUS(status) : 256 + WTERMSIG(status);
  return ended;
}

Ended run(const faults::Clerk& clerk, const std::string& script) {
  return Started(clerk, script).ended();
}

}  // namespace together
