#!/usr/bin/python3
"""Verifies completion records and proofs of sheets. Written from the standards (RFC 7493, 8785, 9162; W3C Verifiable Credentials 2.0,
Data Integrity eddsa-jcs-2022, did:key) and platform/evidence/RECORD.md alone, as a second reading of them.

Usage: verify_record.py PROGRAM_ID_HEX FILE...
Prints one line per file and, for proofs, one per sheet. Exit 0: everything verifies. 1: something does not. 2: usage.
"""
import datetime
import hashlib
import json
import math
import re
import sys

from nacl.bindings import crypto_core_ed25519_is_valid_point
from nacl.exceptions import BadSignatureError
from nacl.signing import VerifyKey

ALPHABET = "123456789ABCDEFGHJKLMNPQRSTUVWXYZabcdefghijkmnopqrstuvwxyz"
CONTEXT = ["https://www.w3.org/ns/credentials/v2", {"@vocab": "urn:uuid:5d0c6a1e-8f0b-4f0e-9b7e-2c61a4d0f3b8#"}]
UUID = re.compile(r"urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[89ab][0-9a-f]{3}-[0-9a-f]{12}\Z")
TIME = re.compile(r"(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:[0-5]\dZ\Z")


class Wrong(Exception):
    """Why something does not verify."""


def need(condition, why):
    if not condition:
        raise Wrong(why)


# I-JSON (RFC 7493)

def object_once(pairs):
    need(len({name for name, _ in pairs}) == len(pairs), "a member stands twice")
    return dict(pairs)


def no_number(text):
    raise Wrong(f"{text} is no number of JSON")


def finite(text):
    number = float(text)
    need(math.isfinite(number), "a number is too large")
    return number


def parse(data):
    try:
        value = json.loads(data.decode("utf-8"), object_pairs_hook=object_once, parse_constant=no_number, parse_float=finite)
        json.dumps(value, ensure_ascii=False).encode("utf-8")  # refuses surrogates that stand alone
    except (UnicodeError, json.JSONDecodeError) as error:
        raise Wrong(f"not I-JSON: {error}") from error
    return value


# Canonical JSON (RFC 8785)

def number_text(value):
    number = float(value)
    need(math.isfinite(number) and number == value, "a number that a double does not hold")
    if number == 0:
        return "0"
    mantissa, _, power = f"{abs(number)!r}".partition("e")
    whole, _, fraction = mantissa.partition(".")
    digits = (whole + fraction).lstrip("0")
    point = len(whole) + int(power or 0) - (len(whole + fraction) - len(digits))
    digits = digits.rstrip("0")
    count = len(digits)
    if count <= point <= 21:
        text = digits + "0" * (point - count)
    elif 0 < point <= 21:
        text = digits[:point] + "." + digits[point:]
    elif -6 < point <= 0:
        text = "0." + "0" * -point + digits
    else:
        text = digits[0] + ("." + digits[1:] if count > 1 else "") + f"e{point - 1:+d}"
    return "-" + text if number < 0 else text


def string_text(value):
    short = {"\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f", "\r": "\\r", '"': '\\"', "\\": "\\\\"}
    return '"' + "".join(short.get(c) or (f"\\u{ord(c):04x}" if c < " " else c) for c in value) + '"'


def canonical(value):
    if value is None or isinstance(value, bool):
        return {None: "null", True: "true", False: "false"}[value]
    if isinstance(value, str):
        return string_text(value)
    if isinstance(value, (int, float)):
        return number_text(value)
    if isinstance(value, list):
        return "[" + ",".join(map(canonical, value)) + "]"
    names = sorted(value, key=lambda name: name.encode("utf-16-be"))
    return "{" + ",".join(string_text(name) + ":" + canonical(value[name]) for name in names) + "}"


def digest_of(value):
    return hashlib.sha256(canonical(value).encode()).digest()


# Keys and signatures (did:key, multibase, eddsa-jcs-2022)

def multibase(text):
    need(isinstance(text, str) and text[:1] == "z" and len(text) < 200, "not base58btc")
    number = 0
    for c in text[1:]:
        need(c in ALPHABET, "not base58btc")
        number = 58 * number + ALPHABET.index(c)
    zeros = len(text[1:]) - len(text[1:].lstrip("1"))
    return bytes(zeros) + number.to_bytes((number.bit_length() + 7) // 8, "big")


def did_key(did):
    need(isinstance(did, str) and did.startswith("did:key:"), "not a did:key")
    data = multibase(did[len("did:key:"):])
    need(data[:2] == b"\xed\x01" and len(data) == 34, "not an Ed25519 key")
    need(crypto_core_ed25519_is_valid_point(data[2:]), "a key outside the prime-order group")
    return data[2:]


def verify_proof(document):
    need(isinstance(document.get("proof"), dict), "it has no proof")
    proof = dict(document["proof"])
    unsecured = {name: value for name, value in document.items() if name != "proof"}
    signature = multibase(proof.pop("proofValue", None))
    only(proof, "type cryptosuite created verificationMethod proofPurpose @context", "its proof")
    kind = proof["type"], proof["cryptosuite"], proof["proofPurpose"]
    need(kind == ("DataIntegrityProof", "eddsa-jcs-2022", "assertionMethod"), "another kind of proof")
    did, _, part = str(proof["verificationMethod"]).partition("#")
    key = did_key(did)
    need("did:key:" + part == did, "another key than the did's own")
    need(proof["@context"] == unsecured.get("@context"), "the proof is over other contexts")
    try:
        VerifyKey(key).verify(digest_of(proof) + digest_of(unsecured), signature)
    except (BadSignatureError, ValueError, TypeError) as error:
        raise Wrong("the signature does not fit") from error
    return key, proof["created"]


# Trees (RFC 9162 section 2.1.3.2)

def included(root, size, index, leaf, path):
    if index >= size:
        return False
    fn, sn, r = index, size - 1, leaf
    for p in path:
        if sn == 0:
            return False
        if fn & 1 or fn == sn:
            r = hashlib.sha256(b"\x01" + p + r).digest()
            while not fn & 1 and fn:
                fn, sn = fn >> 1, sn >> 1
        else:
            r = hashlib.sha256(b"\x01" + r + p).digest()
        fn, sn = fn >> 1, sn >> 1
    return sn == 0 and r == root


# The record (RECORD.md)

def only(value, names, what, optional=""):
    need(isinstance(value, dict), f"{what} is no object")
    need(set(names.split()) <= set(value) <= set(names.split()) | set(optional.split()), f"{what} has other members")
    return value


def text(value, what, empty=False):
    need(isinstance(value, str) and (value or empty), f"{what} is no text")
    return value


def count(value, what):
    need(isinstance(value, int) and not isinstance(value, bool) and 0 <= value <= 100000, f"{what} is no number")
    return value


def raw(value, size, what):
    need(isinstance(value, str) and re.fullmatch(f"[0-9a-f]{{{2 * size}}}", value), f"{what} is not of {size} bytes")
    return bytes.fromhex(value)


def day(value, what):
    try:
        need(isinstance(value, str) and len(value) == 10, f"{what} is no day")
        return datetime.date.fromisoformat(value)
    except ValueError as error:
        raise Wrong(f"{what} is no day") from error


def position(value, what):
    only(value, "device stream entry hash", what)
    need(isinstance(value["entry"], int) and 0 <= value["entry"] < 1 << 32, f"{what} has no place")
    return raw(value["device"], 32, what), raw(value["stream"], 16, what), raw(value["hash"], 32, what)


def person_urn(person):
    data = bytearray(person)
    data[6], data[8] = data[6] & 0x0F | 0x80, data[8] & 0x3F | 0x80
    h = data.hex()
    return f"urn:uuid:{h[:8]}-{h[8:12]}-{h[12:16]}-{h[16:20]}-{h[20:]}"


def verify_subject(subject, person):
    only(subject, "id name requirementSet setDigest level required counted targets decided sheets", "the subject", "exception")
    need(subject["id"] == person_urn(person), "the subject is not the person of the journal")
    text(subject["name"], "the name"), text(subject["requirementSet"], "the set"), raw(subject["setDigest"], 32, "the set's digest")
    day(subject["decided"], "the day")
    need(subject["level"] == "initialed", "only initialed cases support a completion")
    need(isinstance(subject["targets"], list) and subject["targets"], "no targets")
    for target in subject["targets"]:
        only(target, "target required placed", "a target")
        text(target["target"], "a target")
        need(count(target["placed"], "placed") <= count(target["required"], "required"), "more placed than required")
    names = [target["target"] for target in subject["targets"]]
    need(len(set(names)) == len(names), "a target stands twice")
    for name, part in (("required", "required"), ("counted", "placed")):
        need(subject[name] == sum(target[part] for target in subject["targets"]), f"{name} is not the sum over the targets")
    short = subject["counted"] < subject["required"]
    need(short == ("exception" in subject), "an exception where nothing is short, or none where something is")
    if short:
        text(only(subject["exception"], "reason", "the exception")["reason"], "the reason of the exception")
    sheets = only(subject["sheets"], "count root", "sheets")
    size = count(sheets["count"], "the number of sheets")
    need(size <= subject["counted"] and (size == 0) == (subject["counted"] == 0), "the number of sheets does not fit")
    return names, size, raw(sheets["root"], 32, "the root")


def verify_record(record, program):
    need(isinstance(record, dict), "no record")
    key, created = verify_proof(record)
    only(record, "@context id type issuer validFrom credentialSubject journal proof", "the record", "supersedes")
    need(record["@context"] == CONTEXT, "other contexts")
    need(record["type"] == ["VerifiableCredential", "CompletionRecord"], "another type")
    need(did_key(record["issuer"]) == key == program, "another program signed it")
    need(isinstance(record["id"], str) and UUID.match(record["id"]), "its id is no urn:uuid")
    time = TIME.match(text(record["validFrom"], "its time"))
    need(time and day(time[1], "its day") and created == record["validFrom"], "signed at another time than it says")
    only(record["journal"], "head decision", "the journal")
    head, decision = (position(record["journal"][name], name) for name in ("head", "decision"))
    need(head[1] == decision[1] and head[0] != decision[0], "the entries do not belong together")
    tree = verify_subject(record["credentialSubject"], head[1])
    if "supersedes" in record:
        earlier = only(record["supersedes"], "record digest", "supersedes")
        raw(earlier["digest"], 32, "the digest of the earlier record")
        need(UUID.match(text(earlier["record"], "the earlier record")) and earlier["record"] != record["id"], "no earlier record")
    return tree


def verify_sheet(proof, targets, size, root):
    only(proof, "index salt sheet path", "a proof")
    sheet = only(proof["sheet"], "sheet date site cases signed initialed", "a sheet", "imported")
    if "imported" in sheet:
        imported = only(sheet["imported"], "attested source preceptor credential", "the import")
        need(imported["attested"] is False and sheet["signed"] == [], "an import that somebody attested")
        text(imported["source"], "the source"), text(imported["preceptor"], "the preceptor", True), text(imported["credential"], "the credential", True)
    need(isinstance(sheet["cases"], list) and sheet["cases"], "a sheet without a case")
    for case in sheet["cases"]:
        need(only(case, "procedure role category target", "a case")["target"] in targets, "a target that the record does not name")
    need(isinstance(proof["path"], list), "no path")
    path = [raw(node, 32, "a digest") for node in proof["path"]]
    leaf = hashlib.sha256(b"\x00" + raw(proof["salt"], 16, "the salt") + canonical(sheet).encode()).digest()
    need(included(root, size, count(proof["index"], "the index"), leaf, path), "the sheet is not among those of the record")
    return raw(sheet["sheet"], 16, "the sheet's id").hex()


def verify_file(data, program):
    document = parse(data)
    need(isinstance(document, dict), "no object")
    if document.get("type") != "SheetProofs":
        verify_record(document, program)
        return "a record", digest_of(document).hex(), []
    only(document, "type record sheets", "the file")
    tree = verify_record(document["record"], program)
    need(isinstance(document["sheets"], list) and document["sheets"], "no sheets")
    return "proofs with a record", digest_of(document["record"]).hex(), [verify_sheet(p, *tree) for p in document["sheets"]]


def main(arguments):
    if len(arguments) < 2 or not re.fullmatch("[0-9a-f]{64}", arguments[0]):
        print(__doc__, file=sys.stderr)
        return 2
    wrong = 0
    for name in arguments[1:]:
        try:
            with open(name, "rb") as file:
                what, digest, sheets = verify_file(file.read(), bytes.fromhex(arguments[0]))
            print(f"verified: {what} {digest}", *sheets)
        except Wrong as why:
            wrong += 1
            print(f"not verified: {why}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
