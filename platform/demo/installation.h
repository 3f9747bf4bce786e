#pragma once

#include "platform/demo/deferred_vault.h"
#include "platform/session/session.h"

#include <memory>
#include <string>

namespace peelpack::demo {

/// One vault of the invented program. Ends by throwing Stopped.
class Installation {
public:
    Installation() = default;
    /// `code` opens the vault's file, which is there.
    Installation(std::string file, keys::Secret code) : m_file(std::move(file)), m_code(std::move(code)) {}

    [[nodiscard]] const std::string& file() const { return m_file; }
    [[nodiscard]] const keys::Secret& code() const { return m_code; }

    /// The vault before it is anybody's, or between two sessions.
    vault::Vault& vault(vault::MarkStore& marks, keys::RandomSource& random);
    /// Begins a session on it.
    void begin(vault::MarkStore& marks, session::Clock clock, keys::RandomSource& random);
    /// Only between begin() and close().
    [[nodiscard]] session::Session& session() const { return *m_session; }
    /// Ends session and vault; everything is in the file.
    void close();
    /// Gives the closed vault's file another name.
    void rename(std::string file);

private:
    std::string m_file;
    keys::Secret m_code;
    std::unique_ptr<DeferredVault> m_idle;
    DeferredVault* m_open = nullptr; ///< of the session, or the idle one
    std::unique_ptr<session::Session> m_session;
};

/// Makes a vault in each of the files, on two threads: stretching the passphrase takes most of the time.
std::vector<Installation> makeInstallations(const std::vector<std::string>& files, const std::string& passphrase,
                                            vault::MarkStore& marks, keys::RandomSource& random,
                                            const std::function<void(std::size_t done)>& progress);

} // namespace peelpack::demo
