#include "platform/evidence/completion_record.h"

#include "platform/evidence/did_key.h"
#include "platform/evidence/jcs.h"
#include "platform/evidence/members.h"
#include "platform/evidence/proof.h"

#include <algorithm>
#include <set>

namespace peelpack::evidence {
namespace {

constexpr std::uint32_t mostCases = 100'000;
constexpr std::size_t mostTargets = 64;
constexpr std::string_view uuidPrefix = "urn:uuid:";

const Json& context()
{
    static const Json contexts{"https://www.w3.org/ns/credentials/v2",
                               {{"@vocab", "urn:uuid:5d0c6a1e-8f0b-4f0e-9b7e-2c61a4d0f3b8#"}}};
    return contexts;
}

const Json& types()
{
    static const Json both{"VerifiableCredential", recordType};
    return both;
}

std::string uuidUrn(keys::Id id, unsigned version)
{
    constexpr std::size_t versionByte = 6;
    constexpr std::size_t variantByte = 8;
    id.bytes.at(versionByte) = static_cast<std::uint8_t>((id.bytes.at(versionByte) & 0x0FU) | (version << 4U));
    id.bytes.at(variantByte) = static_cast<std::uint8_t>((id.bytes.at(variantByte) & 0x3FU) | 0x80U);
    std::string text = keys::hex(id.view());
    for (const std::size_t hyphen : {8U, 13U, 18U, 23U}) {
        text.insert(hyphen, "-");
    }
    return std::string(uuidPrefix) + text;
}

/// "urn:uuid:" with any version of RFC 9562, lower case.
bool isUuidUrn(std::string_view text)
{
    if (!text.starts_with(uuidPrefix)) {
        return false;
    }
    text.remove_prefix(uuidPrefix.size());
    std::string digits(text);
    digits.erase(std::remove(digits.begin(), digits.end(), '-'), digits.end());
    const auto bytes = keys::fromHex(digits);
    const auto id = bytes ? keys::Id::from(*bytes) : std::nullopt;
    return id && uuidUrn(*id, id->bytes[6] >> 4U) == std::string(uuidPrefix) + std::string(text);
}

Json positionJson(const journal::Position& position)
{
    return {{"device", keys::hex(position.feed.device.view())},
            {"stream", keys::hex(position.feed.stream.view())},
            {"entry", position.seq},
            {"hash", keys::hex(position.hash.view())}};
}

journal::Position readPosition(Members& parent, const char* member)
{
    constexpr std::uint32_t lastEntry = 0xFFFFFFFE;
    Members members(parent.object(member), member, {"device", "stream", "entry", "hash"});
    const journal::Position position{{members.bytes<keys::VerifyKey>("device"), members.bytes<keys::Id>("stream")},
                                     members.number("entry", lastEntry),
                                     members.bytes<keys::Hash>("hash")};
    parent.add(members);
    return position;
}

Json subjectJson(const CompletionRecord& record)
{
    Json targets = Json::array();
    for (const TargetMet& target : record.targets) {
        targets.push_back({{"target", target.id}, {"required", target.required}, {"placed", target.placed}});
    }
    Json subject{{"id", urnOf(record.student)},
                 {"name", record.name},
                 {"requirementSet", record.requirementSet},
                 {"setDigest", keys::hex(record.setDigest.view())},
                 {"level", record.level},
                 {"required", record.required()},
                 {"counted", record.counted()},
                 {"targets", std::move(targets)},
                 {"decided", record.date.iso()}};
    if (record.exception) {
        subject["exception"] = {{"reason", *record.exception}};
    }
    subject["sheets"] = {{"count", record.sheets}, {"root", keys::hex(record.sheetsRoot.view())}};
    return subject;
}

Json unsignedDocument(const CompletionRecord& record)
{
    Json document{{"@context", context()},
                  {"id", record.id},
                  {"type", types()},
                  {"issuer", didOf(record.program)},
                  {"validFrom", record.issued},
                  {"credentialSubject", subjectJson(record)},
                  {"journal", {{"head", positionJson(record.head)}, {"decision", positionJson(record.entry)}}}};
    if (record.supersedes) {
        document["supersedes"] = {{"record", record.supersedes->id},
                                  {"digest", keys::hex(record.supersedes->digest.view())}};
    }
    return document;
}

void readSubject(Members& document, CompletionRecord& record)
{
    Members subject(document.object("credentialSubject"), "credentialSubject",
                    {"id", "name", "requirementSet", "setDigest", "level", "required", "counted", "targets", "decided",
                     "exception", "sheets"});
    record.name = subject.text("name");
    record.requirementSet = subject.text("requirementSet");
    record.setDigest = subject.bytes<keys::Hash>("setDigest");
    record.level = subject.text("level");
    for (const Json& item : subject.list("targets", 1, mostTargets)) {
        Members target(item, "A target", {"target", "required", "placed"});
        record.targets.push_back(
            {target.text("target"), target.number("required", mostCases), target.number("placed", mostCases)});
        subject.add(target);
    }
    record.date = subject.date("decided");
    if (subject.has("exception")) {
        Members exception(subject.object("exception"), "exception", {"reason"});
        record.exception = exception.text("reason", Members::longestReason);
        subject.add(exception);
    }
    Members sheets(subject.object("sheets"), "sheets", {"count", "root"});
    record.sheets = sheets.number("count", mostCases);
    record.sheetsRoot = sheets.bytes<Digest>("root");
    subject.add(sheets);
    subject.exactly("id", urnOf(record.student));
    subject.exactly("required", record.required());
    subject.exactly("counted", record.counted());
    document.add(subject);
}

base::Result<CompletionRecord> recordIn(const Json& json)
{
    Members document(
        json, "The record",
        {"@context", "id", "type", "issuer", "validFrom", "credentialSubject", "journal", "supersedes", "proof"});
    CompletionRecord record;
    document.exactly("@context", context());
    document.exactly("type", types());
    record.id = document.text("id");
    record.issued = document.text("validFrom");
    const auto issuer = keyOfDid(document.text("issuer"));
    if (!issuer) {
        document.refuse("issuer");
    }
    record.program = issuer.value_or(keys::VerifyKey());
    Members cited(document.object("journal"), "journal", {"head", "decision"});
    record.head = readPosition(cited, "head");
    record.entry = readPosition(cited, "decision");
    document.add(cited);
    record.student = record.head.feed.stream;
    readSubject(document, record);
    if (document.has("supersedes")) {
        Members earlier(document.object("supersedes"), "supersedes", {"record", "digest"});
        record.supersedes = {earlier.text("record"), earlier.bytes<Digest>("digest")};
        document.add(earlier);
    }
    if (!document.fault().empty()) {
        return base::Error{base::ErrorCode::BadInput, document.fault()};
    }
    return record;
}

/// Empty when the parts of a record agree.
std::string contradiction(const CompletionRecord& record)
{
    std::set<std::string> names;
    for (const TargetMet& target : record.targets) {
        if (target.placed > target.required || target.id.empty() || !names.insert(target.id).second) {
            return "Its targets contradict one another.";
        }
    }
    if (record.exception.has_value() != (record.counted() < record.required())) {
        return record.exception ? "It names an exception, and nothing is short."
                                : "Cases are short, and it names no exception.";
    }
    if (record.exception && record.exception->empty()) {
        return "It names an exception without a reason.";
    }
    if (record.level != "initialed") {
        return "Only initialed cases support a completion.";
    }
    if (record.sheets > record.counted() || (record.sheets == 0) != (record.counted() == 0)) {
        return "Its number of sheets does not fit the number of cases.";
    }
    const bool cited = record.head.feed.stream == record.student && record.entry.feed.stream == record.student &&
                       record.entry.feed.device != record.head.feed.device;
    if (!cited) {
        return "The entries that it cites do not belong together.";
    }
    const bool superseding =
        record.supersedes && (!isUuidUrn(record.supersedes->id) || record.supersedes->id == record.id);
    if (!isUuidUrn(record.id) || superseding || !isDateTime(record.issued) || record.name.empty() ||
        record.requirementSet.empty()) {
        return "An id, name or time in it is not usable.";
    }
    return {};
}

} // namespace

std::uint32_t CompletionRecord::required() const
{
    std::uint32_t sum = 0;
    for (const TargetMet& target : targets) {
        sum += target.required;
    }
    return sum;
}

std::uint32_t CompletionRecord::counted() const
{
    std::uint32_t sum = 0;
    for (const TargetMet& target : targets) {
        sum += target.placed;
    }
    return sum;
}

std::string randomUrn(const keys::Id& random)
{
    constexpr unsigned randomVersion = 4;
    return uuidUrn(random, randomVersion);
}

std::string urnOf(const keys::Id& person)
{
    constexpr unsigned ownVersion = 8;
    return uuidUrn(person, ownVersion);
}

base::Result<Json> issue(const CompletionRecord& record, const keys::SigningKey& programKey)
{
    if (record.program != programKey.verifyKey()) {
        return base::Error{base::ErrorCode::BadValue, "That is not the code of this program."};
    }
    if (const std::string why = contradiction(record); !why.empty()) {
        return base::Error{base::ErrorCode::BadValue, why};
    }
    base::Result<Json> document = withProof(unsignedDocument(record), record.issued, programKey);
    if (!document) {
        return document.error();
    }
    const base::Result<CompletionRecord> readBack = verifyRecord(document.value(), record.program);
    if (!readBack) {
        return readBack.error();
    }
    return document;
}

bool isRecord(const Json& document)
{
    const auto type = document.is_object() ? document.find("type") : document.end();
    return document.is_object() && type != document.end() && type->is_array() &&
           std::find(type->begin(), type->end(), Json(recordType)) != type->end();
}

base::Result<CompletionRecord> verifyRecord(const Json& document, const keys::VerifyKey& program)
{
    const base::Result<Proven> proven = verifyProof(document);
    if (!proven) {
        return proven.error();
    }
    base::Result<CompletionRecord> record = recordIn(document);
    if (!record) {
        return record.error();
    }
    const auto wrong = [](const std::string& why) { return base::Error{base::ErrorCode::BadValue, why}; };
    if (record.value().program != program || proven.value().signer != program) {
        return wrong("Another program than this one signed it.");
    }
    if (document["proof"].find("@context") == document["proof"].end()) {
        return wrong("Its signature does not cover what its terms mean.");
    }
    if (proven.value().created != record.value().issued) {
        return wrong("It was signed at another time than it says.");
    }
    if (const std::string why = contradiction(record.value()); !why.empty()) {
        return wrong(why);
    }
    return record;
}

Digest recordDigest(const Json& document)
{
    const base::Result<std::string> text = canonical(document);
    return text ? sha256({keys::bytesOf(text.value())}) : Digest{};
}

} // namespace peelpack::evidence
