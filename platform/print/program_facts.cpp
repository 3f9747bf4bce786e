#include "platform/print/papers.h"
#include "platform/session/directory.h"
#include "platform/session/program_rules.h"
#include "sync/merge/record_content.h"

#include <algorithm>

namespace peelpack::print {

std::string shortProgram(const keys::VerifyKey& program)
{
    constexpr std::size_t digits = 16; // enough to tell programs apart on paper
    return keys::hex(program.view()).substr(0, digits);
}

PageFrame frameFor(const session::Session& session, PageSize size)
{
    const std::optional<journal::Policy> policy = session::policyInForce(session);
    const std::string program =
        (policy && !policy->term.empty() ? policy->term + ", program " : "Program ") + shortProgram(session.program());
    return {QString::fromStdString(program), QString::fromStdString(merge::timeOf(session.now()).day().iso()), size};
}

ProgramFacts factsOf(const session::Session& session)
{
    ProgramFacts facts;
    if (const auto policy = session::policyInForce(session)) {
        facts.term = policy->term;
    }
    const session::Directory directory(session);
    for (const session::Person& person : directory.people()) {
        for (const session::GrantedDevice& device : person.devices) {
            facts.revokedDevices += device.revoked ? 1U : 0U;
        }
    }
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        const bool active = std::any_of(preceptor.keys.begin(), preceptor.keys.end(),
                                        [](const session::SigningKeyOf& key) { return !key.revoked; });
        facts.activePreceptors += active ? 1U : 0U;
    }
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* holder = session.authority().holder(id.device);
        for (const journal::ForkEvidence& evidence : feed.evidence()) {
            facts.splitRecords.push_back(
                "The record of " + (holder == nullptr ? std::string("a device nobody granted") : holder->name) +
                " split at entry " + std::to_string(evidence.seq) + "; both versions are kept.");
        }
    }
    return facts;
}

} // namespace peelpack::print
