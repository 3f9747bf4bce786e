#pragma once

#include "platform/session/session.h"
#include "platform/session/signing.h"

namespace peelpack::session {

/// What a preceptor's own phone signed.
struct SignedHere {
    std::string student; ///< as the student's phone named them
    keys::Bytes answer;  ///< the code that goes back to the student's phone
    journal::Statement statement;
};

/// The vault of a preceptor's own phone: its signing key, who signs with it, and what it signed. It belongs to no
/// program and has no journal; what it signed is kept so that its owner can look through it and show an answer again.
class PreceptorVault {
public:
    /// BadValue: the vault is somebody's record in a program.
    static base::Result<std::unique_ptr<PreceptorVault>> open(std::unique_ptr<vault::Vault> vault, Clock clock);
    /// The same when its contents were read already.
    static base::Result<std::unique_ptr<PreceptorVault>> open(std::unique_ptr<vault::Vault> vault,
                                                              const vault::Contents& contents, Clock clock);
    /// Nothing in it belongs to a program, and nothing of it is damaged beyond telling.
    static bool fits(const vault::Contents& contents);

    /// The key for which an instructor vouches.
    [[nodiscard]] const keys::VerifyKey& key() const { return m_key; }
    /// Empty until its owner has said it.
    [[nodiscard]] const SignerName& owner() const { return m_owner; }
    base::Result<bool> setOwner(const SignerName& owner);
    /// In the order in which it was signed.
    [[nodiscard]] const std::vector<SignedHere>& signedHere() const { return m_signed; }
    /// What could not be read when the vault was opened, in words.
    [[nodiscard]] const std::vector<std::string>& damage() const { return m_damage; }
    [[nodiscard]] journal::Time now() const { return m_clock(); }

    /// Signs a request and answers with the code for the student's phone, once it is kept here. `sheet` names the
    /// request's sheet.
    base::Result<keys::Bytes> sign(const journal::SigningRequest& request, const SignerName& signer,
                                   const SheetMarks& sheet);

private:
    PreceptorVault(std::unique_ptr<vault::Vault> vault, Clock clock, const keys::VerifyKey& key)
        : m_vault(std::move(vault)), m_clock(std::move(clock)), m_key(key)
    {
    }
    void take(const vault::Contents& contents);

    std::unique_ptr<vault::Vault> m_vault;
    Clock m_clock;
    keys::VerifyKey m_key;
    SignerName m_owner;
    std::vector<SignedHere> m_signed;
    std::uint32_t m_next = 0; ///< number of the next that is kept
    std::vector<std::string> m_damage;
};

/// Whose a vault turned out to be: one of the two.
struct OpenedVault {
    std::unique_ptr<Session> session;
    std::unique_ptr<PreceptorVault> preceptor;
};
/// Reads a vault once, whoever's it is.
base::Result<OpenedVault> openWhosever(std::unique_ptr<vault::Vault> vault, Clock clock, keys::RandomSource& random);

} // namespace peelpack::session
