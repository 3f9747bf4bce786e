#include "platform/demo/installation.h"

#include "platform/demo/need.h"

#include <atomic>
#include <cstdio>
#include <future>

namespace peelpack::demo {

vault::Vault& Installation::vault(vault::MarkStore& marks, keys::RandomSource& random)
{
    if (m_open == nullptr) {
        m_idle = std::make_unique<DeferredVault>(
            need(vault::SqliteVault::openWithCode(m_file, m_code.view(), marks, random)));
        m_open = m_idle.get();
    }
    return *m_open;
}

void Installation::begin(vault::MarkStore& marks, session::Clock clock, keys::RandomSource& random)
{
    this->vault(marks, random);
    m_session = need(session::Session::open(std::move(m_idle), std::move(clock), random));
}

void Installation::close()
{
    if (m_open != nullptr) {
        need(m_open->flush());
    }
    m_session.reset();
    m_idle.reset();
    m_open = nullptr;
}

void Installation::rename(std::string file)
{
    if (std::rename(m_file.c_str(), file.c_str()) != 0) {
        throw Stopped{{base::ErrorCode::CannotWrite, "Cannot make the file " + file + "."}};
    }
    m_file = std::move(file);
}

std::vector<Installation> makeInstallations(const std::vector<std::string>& files, const std::string& passphrase,
                                            vault::MarkStore& marks, keys::RandomSource& random,
                                            const std::function<void(std::size_t done)>& progress)
{
    std::vector<Installation> made(files.size());
    std::atomic<std::size_t> next = 0;
    std::atomic<std::size_t> done = 0;
    const auto work = [&](bool shows) {
        for (std::size_t i = next++; i < files.size(); i = next++) {
            // The vault closes on the thread that opened it; its code opens it elsewhere.
            made[i] = {files[i], need(vault::SqliteVault::make(files[i], vault::SecretKind::Passphrase,
                                                               keys::bytesOf(passphrase), marks, random))
                                     .code};
            ++done;
            if (shows) {
                progress(done);
            }
        }
    };
    std::future<void> other = std::async(std::launch::async, work, false);
    try {
        work(true);
    } catch (...) {
        next = files.size();
        other.wait();
        throw;
    }
    other.get();
    return made;
}

} // namespace peelpack::demo
