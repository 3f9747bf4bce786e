#include "qml/student/waiting_list.h"

#include "qml/words/words.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace peelpack::student {
namespace {

constexpr const char* noteName = "app.waiting";

} // namespace

WaitingList::WaitingList(Desk& desk) : m_desk(desk)
{
    const QJsonObject kept = QJsonDocument::fromJson(desk.kept(noteName)).object();
    for (auto entry = kept.begin(); entry != kept.end(); ++entry) {
        m_names.insert(entry.key(), entry.value().toString());
    }
}

QString WaitingList::of(const record::SheetRecord& sheet) const
{
    return m_names.value(words::fromUtf8(sheet.id.hex()));
}

QString WaitingList::note(const QString& sheet, const QString& preceptor)
{
    const QString name = preceptor.simplified().left(80);
    QMap<QString, QString> names;
    for (auto entry = m_names.begin(); entry != m_names.end(); ++entry) { // those that were signed need no note
        const record::SheetRecord* known = m_desk.sheet(entry.key());
        if (known != nullptr && known->standing == record::SheetStanding::Open) {
            names.insert(entry.key(), entry.value());
        }
    }
    if (name.isEmpty()) {
        names.remove(sheet);
    } else {
        names.insert(sheet, name);
    }
    QJsonObject kept;
    for (auto entry = names.begin(); entry != names.end(); ++entry) {
        kept.insert(entry.key(), entry.value());
    }
    const QString failed =
        m_desk.keep(noteName, names.isEmpty() ? QByteArray() : QJsonDocument(kept).toJson(QJsonDocument::Compact));
    if (failed.isEmpty()) {
        m_names = names;
        m_desk.refresh();
    }
    return failed;
}

} // namespace peelpack::student
