#include "qml/shell/taking_over.h"

#include "platform/session/setup.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"

#include <memory>

namespace peelpack::shell {
namespace {

constexpr std::uint32_t secondDirector = 2;
constexpr std::uint32_t mostDirectors = 10'000;

} // namespace

void TakingOver::make(const QString& code, const QString& number, const QString& name, const QString& secret,
                      const QString& again, bool pin)
{
    if (made()) {
        return;
    }
    const base::Result<keys::Secret> read = keys::codeFromText(keys::CodeSort::Program, code.trimmed().toStdString());
    if (!read) {
        fail(words::why(read.error()));
        return;
    }
    const auto key = std::make_shared<base::Result<keys::SigningKey>>(keys::programKey(read.value().view()));
    const std::string called = words::line(name, mostName);
    const std::uint32_t epoch = number.trimmed().toUInt();
    if (!*key) {
        fail(words::why(key->error()));
    } else if (called.empty()) {
        fail(tr("Write your name as the program knows it."));
    } else if (epoch < secondDirector || epoch > mostDirectors) {
        fail(tr("Which director of this program are you? The second is 2, the third 3."));
    } else {
        FirstStart::make({secret, again, pin},
                         [this, key, called, epoch](std::unique_ptr<vault::SqliteVault>& vault) -> base::Result<bool> {
                             const base::Result<bool> done = session::takeOverProgram(
                                 *vault, key->value(), epoch, surroundings().random.id(), called);
                             if (done) {
                                 m_program = words::fromUtf8(keys::hex(key->value().verifyKey().view()));
                             }
                             return done;
                         });
    }
}

} // namespace peelpack::shell
