#include "platform/session/setup.h"
#include "platform/session/sheets.h"
#include "platform/vault/install_mark.h"
#include "platform/vault/memory_vault.h"
#include "platform/vault/sqlite_vault.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/invitation.h"
#include "sync/keys/password.h"
#include "tests/qml/support/small_program.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>

#include "tests/support/catch.h"

using namespace peelpack;

namespace {

/// The app in Spanish, as long as it lives.
class Spanish {
public:
    Spanish()
    {
        REQUIRE(m_translator.load(QStringLiteral(":/peelpack/i18n/peelpack_es.qm")));
        QCoreApplication::installTranslator(&m_translator);
    }
    ~Spanish() { QCoreApplication::removeTranslator(&m_translator); }
    Spanish(const Spanish&) = delete;
    Spanish& operator=(const Spanish&) = delete;
    Spanish(Spanish&&) = delete;
    Spanish& operator=(Spanish&&) = delete;

private:
    int m_argc = 0;
    QCoreApplication m_app{m_argc, nullptr};
    QTranslator m_translator;
};

/// Said otherwise than in English.
template <class Result>
void checkSpanish(const Result& result)
{
    REQUIRE_FALSE(result);
    const std::string english = result.error().sentence;
    const std::string spanish = words::why(result.error()).toStdString();
    INFO(english);
    CHECK(spanish != english);
    CHECK(spanish.find('%') == std::string::npos);
}

/// The string literals of a source file, those side by side as one, with what stands before and after.
struct Literal {
    QString text;
    bool pieced = false; ///< put together with something else by +
};

std::vector<Literal> literalsOf(const QString& file)
{
    QFile source(file);
    REQUIRE(source.open(QIODevice::ReadOnly));
    const QString code = QString::fromUtf8(source.readAll());
    static const QRegularExpression run(QStringLiteral(R"re("(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*)re"));
    static const QRegularExpression seam(QStringLiteral(R"re("\s*")re"));
    std::vector<Literal> found;
    auto all = run.globalMatch(code);
    while (all.hasNext()) {
        const QRegularExpressionMatch match = all.next();
        QString text = match.captured();
        text.replace(seam, QString());
        text = text.mid(1, text.size() - 2).replace(QLatin1String("\\\""), QLatin1String("\""));
        const QString before = code.left(match.capturedStart()).trimmed().right(1);
        const QString after = code.mid(match.capturedEnd()).trimmed().left(1);
        found.push_back({text, before == QLatin1String("+") || after == QLatin1String("+")});
    }
    return found;
}

bool known(const QString& text, bool asBeginning)
{
    for (const char* one : words::sentenceTexts()) {
        const QString sentence = QString::fromUtf8(one);
        if (asBeginning ? sentence.startsWith(text) : sentence == text) {
            return true;
        }
    }
    return false;
}

} // namespace

TEST_CASE("Every sentence that is listed is said in Spanish", "[sentences]")
{
    const Spanish spanish;
    REQUIRE(words::sentenceTexts().size() > 150);
    for (const char* text : words::sentenceTexts()) {
        INFO(text);
        const QString said = QCoreApplication::translate("Sentences", text);
        CHECK(said != QString::fromUtf8(text));
        for (const QString& mark : {QStringLiteral("%1"), QStringLiteral("%2"), QStringLiteral("%3")}) {
            CHECK(said.contains(mark) == QString::fromUtf8(text).contains(mark));
        }
    }
}

TEST_CASE("Every reason of the journal is said in Spanish", "[sentences]")
{
    const Spanish spanish;
    const auto last = static_cast<int>(journal::Reason::TooManyEntries);
    for (int i = static_cast<int>(journal::Reason::None) + 1; i <= last; ++i) {
        const std::string english(journal::sentence(static_cast<journal::Reason>(i)));
        INFO(english);
        CHECK_FALSE(english.empty());
        CHECK(words::said(english).toStdString() != english);
    }
}

TEST_CASE("What keys, vault and session say in their sources is listed", "[sentences]")
{
    const QDir root(QStringLiteral(PEELPACK_ROOT));
    // Named so in English by commands only: people are chosen from lists in the app, and paper is read back in English.
    const QStringList commandsOnly{QStringLiteral("More than one "), QStringLiteral("No "),
                                   QStringLiteral("Performed on "), QStringLiteral("Signed by "),
                                   QStringLiteral("Feedback: ")};
    std::size_t seen = 0;
    for (const char* room : {"sync/keys", "platform/vault", "platform/session", "core/record"}) {
        const QDir folder(root.filePath(QLatin1String(room)));
        for (const QString& name : folder.entryList({QStringLiteral("*.cpp")}, QDir::Files)) {
            for (const Literal& literal : literalsOf(folder.filePath(name))) {
                static const QRegularExpression sentence(QStringLiteral("^[A-Z][a-z']*[ ,].*"));
                const bool whole = !literal.pieced && literal.text.endsWith(QLatin1Char('.'));
                if (!sentence.match(literal.text).hasMatch() || (!whole && !literal.pieced) ||
                    (literal.pieced && commandsOnly.contains(literal.text))) {
                    continue;
                }
                INFO(name.toStdString() << ": " << literal.text.toStdString());
                CHECK(known(literal.text, literal.pieced));
                ++seen;
            }
        }
    }
    CHECK(seen > 100);
}

TEST_CASE("What fills in a sentence is found again, and said itself where it can be", "[sentences]")
{
    const Spanish spanish;
    CHECK(words::said("There is no sheet 3f2a here.") == QStringLiteral("Aquí no hay ninguna hoja 3f2a."));
    CHECK(words::said("Damaged: row 17 (entry 5 of feed 2).") ==
          QStringLiteral("Dañado: fila 17 (anotación 5 del registro 2)."));
    CHECK(words::said("Damaged: a parcel that waits.") == QStringLiteral("Dañado: un paquete en espera."));
    CHECK(words::said("There is a file a. b already. already.") ==
          QStringLiteral("Ya existe un archivo a. b already.."));
    CHECK(words::said("Nobody says this.") == QStringLiteral("Nobody says this."));
}

TEST_CASE("Refusals of codes, cards, PINs and invitations are said in Spanish", "[sentences]")
{
    const Spanish spanish;
    for (const char* pin : {"12345a", "12345", "123456", "111111", "1234567890123"}) {
        checkSpanish(keys::checkPin(pin));
    }
    keys::SystemRandom random;
    const keys::Secret code = random.secret(keys::codeSecretBytes);
    const keys::Secret shown = keys::codeText(keys::CodeSort::Vault, code.view());
    const QByteArray text = words::toArray(shown.view());
    for (const keys::CodeSort sort : {keys::CodeSort::Program, keys::CodeSort::Card}) {
        checkSpanish(keys::codeFromText(sort, text.toStdString()));
    }
    checkSpanish(keys::codeFromText(keys::CodeSort::Vault, text.left(12).toStdString()));
    checkSpanish(keys::codeFromText(keys::CodeSort::Vault, text.toStdString() + "?"));
    QByteArray mistyped = text;
    mistyped[0] = mistyped[0] == 'A' ? 'B' : 'A';
    checkSpanish(keys::codeFromText(keys::CodeSort::Vault, mistyped.toStdString()));
    checkSpanish(keys::SigningCard::fromCode(code.view()));
    checkSpanish(keys::Invitation::fromCode(code.view()));
    checkSpanish(keys::InvitationReply::fromCode(code.view()));
}

TEST_CASE("Refusals of a vault and of a session are said in Spanish", "[sentences]")
{
    const Spanish spanish;
    const QTemporaryDir folder;
    vault::FolderMarkStore marks(folder.filePath(QStringLiteral("marks")).toStdString());
    keys::SystemRandom random;
    const std::string file = folder.filePath(QStringLiteral("one.peelvault")).toStdString();
    const auto bytes = [](std::string_view text) { return keys::bytesOf(text); };
    using vault::SqliteVault;
    checkSpanish(SqliteVault::open(file, bytes("x"), marks, random, 0));
    for (const char* weak : {"short", "password", "1234567890", "aaaaaaaaaa"}) {
        checkSpanish(SqliteVault::make(file, vault::SecretKind::Passphrase, bytes(weak), marks, random));
    }
    checkSpanish(SqliteVault::make(file, vault::SecretKind::Pin, bytes("112233"), marks, random));
    {
        auto made = test::need(
            SqliteVault::make(file, vault::SecretKind::Passphrase, bytes("amber walnut lantern"), marks, random));
        checkSpanish(SqliteVault::open(file, bytes("x"), marks, random, 0)); // in use
    }
    checkSpanish(SqliteVault::make(file, vault::SecretKind::Passphrase, bytes("amber walnut lantern"), marks, random));
    for (int i = 0; i < 12; ++i) { // wrong, then to wait, then disabled
        checkSpanish(SqliteVault::open(file, bytes("wrong"), marks, random, i * 1'000'000LL));
        checkSpanish(SqliteVault::open(file, bytes("wrong"), marks, random, i * 1'000'000LL));
    }
    checkSpanish(SqliteVault::openWithCode(file, random.secret(keys::codeSecretBytes).view(), marks, random));
    const std::string other = folder.filePath(QStringLiteral("other")).toStdString();
    QFile plain(QString::fromStdString(other));
    REQUIRE(plain.open(QIODevice::WriteOnly));
    plain.write("This is a letter.");
    plain.close();
    checkSpanish(SqliteVault::open(other, bytes("x"), marks, random, 0));

    checkSpanish(session::Session::open(std::make_unique<vault::MemoryVault>(random), test::now, random));
    const auto director = test::beginSmallProgram(std::make_unique<vault::MemoryVault>(random), random);
    checkSpanish(session::findSheet(*director, random.id(), "3f2a"));
    checkSpanish(session::findSheet(*director, random.id(), "3f"));
}

TEST_CASE("What looks like a patient identifier is named in Spanish", "[sentences]")
{
    const Spanish spanish;
    for (int i = 0; i <= static_cast<int>(sheet::IdentifierKind::Name); ++i) {
        const auto kind = static_cast<sheet::IdentifierKind>(i);
        CHECK(words::of(kind).toStdString() != std::string(sheet::inWords(kind)));
    }
}
