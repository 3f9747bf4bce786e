#pragma once

#include "core/questions/rule_questions.h"
#include "platform/session/directory.h"

/// The program's rules as a sheet and its signers are held against them. They never refuse a signature.
namespace peelpack::session {

/// For the sheets of one student, with the clinical days of their classes. `roles`: as roleRulesInForce() says.
questions::SheetRules sheetRules(const Session& session, const keys::Id& student, const role::RoleRules& roles);

/// What the program says of somebody who is about to mark and sign.
struct MaySignHere {
    bool anybody = false; ///< the program lists nobody: whom it vouches for may sign every role
    bool first = false;   ///< by the program's list, with this credential
    bool second = false;
    bool observation = false;
    /// Empty: the program has said nothing about this preceptor, or does not know them.
    std::optional<questions::SheetRules::Standing> standing;
};
MaySignHere maySign(const Session& session, const std::string& credential, const std::optional<keys::Id>& preceptor);
/// Of somebody whom the program vouches for.
MaySignHere maySign(const Session& session, const Preceptor& preceptor);

} // namespace peelpack::session
