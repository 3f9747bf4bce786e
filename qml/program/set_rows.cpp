#include "qml/program/set_rows.h"

#include "qml/instructor/rules_in_force.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {
namespace {

QString idOf(const session::SetFile& file)
{
    return words::fromUtf8(file.ships ? file.set.id : keys::hex(file.digest.view()));
}

} // namespace

QString SetRows::rowId(const std::string& id, const keys::Hash& digest)
{
    for (const session::SetFile& file : session::shippedSetFiles()) {
        if (file.set.id == id && file.digest == digest) {
            return idOf(file);
        }
    }
    return words::fromUtf8(keys::hex(digest.view()));
}

void SetRows::offer(std::vector<session::SetFile> kept)
{
    m_files = session::shippedSetFiles();
    std::move(kept.begin(), kept.end(), std::back_inserter(m_files));
    m_faults.clear();
    Q_EMIT faultsChanged();
}

void SetRows::read()
{
    std::vector<SetRow> sets;
    for (const session::SetFile& file : m_files) {
        const QString id = idOf(file);
        QStringList asks = instructor::targetLines(file.set);
        if (!file.ships) {
            asks.prepend(tr("From a file: %1, %2").arg(words::fromUtf8(file.set.id), words::fromUtf8(file.set.source)));
        }
        sets.push_back({id, words::fromUtf8(file.set.title), asks, id == m_wanted});
    }
    put(std::move(sets));
}

void SetRows::choose(const QString& id)
{
    m_wanted = id;
    read();
}

const SetRow* SetRows::chosen() const
{
    const auto found = std::find_if(rows().begin(), rows().end(), [](const SetRow& row) { return row.chosen; });
    return found == rows().end() ? nullptr : &*found;
}

const session::SetFile* SetRows::chosenFile() const
{
    const SetRow* row = chosen();
    const auto found = std::find_if(m_files.begin(), m_files.end(), [&](const session::SetFile& file) {
        return row != nullptr && idOf(file) == row->id;
    });
    return found == m_files.end() ? nullptr : &*found;
}

void SetRows::open(const QByteArray& file)
{
    base::Result<session::SetFile> opened = session::setFileFrom(file.toStdString());
    m_faults = opened ? QStringList() : words::saidInLines(opened.error().sentence);
    if (opened) {
        const auto same = std::find_if(m_files.begin(), m_files.end(), [&](const session::SetFile& one) {
            return one.digest == opened.value().digest || (one.ships && one.set.id == opened.value().set.id);
        });
        if (same == m_files.end()) {
            m_files.push_back(std::move(opened).value());
            m_wanted = idOf(m_files.back());
        } else if (same->digest == opened.value().digest) {
            m_wanted = idOf(*same);
        } else {
            m_faults = {tr("A set that ships with Peelpack has the id %1. Give the set in the file an id of its own.")
                            .arg(words::fromUtf8(same->set.id))};
        }
    }
    read();
    Q_EMIT faultsChanged();
}

} // namespace peelpack::program
