#include "platform/share/share.h"
#include "tests/support/catch.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace peelpack;

namespace {

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.write(bytes) == bytes.size());
}

/// What a share told last.
struct Heard {
    explicit Heard(share::Share& share)
    {
        QObject::connect(&share, &share::Share::openedSome,
                         [this](const QString& whatFor, const QStringList& called, const QByteArrayList& read) {
                             what = whatFor;
                             names = called;
                             files = read;
                         });
        QObject::connect(&share, &share::Share::saved, [this](const QString& where) { saved = where; });
        QObject::connect(&share, &share::Share::failed, [this](const QString& why) { failed = why; });
    }
    QString what;
    QStringList names;
    QByteArrayList files;
    QString saved;
    QString failed;
};

} // namespace

TEST_CASE("files that are chosen or dropped come in with their names, those of a folder in order")
{
    const QTemporaryDir folder;
    write(folder.filePath("b.parcel"), "second");
    write(folder.filePath("a.parcel"), "first");
    REQUIRE(QDir(folder.path()).mkdir("inner"));
    write(folder.filePath("inner/c.parcel"), "not taken");
    share::DialogShare share;
    Heard heard(share);
    share.openSome("parcels", true);
    CHECK(share.asking() == "folder");
    share.answer(QUrl::fromLocalFile(folder.path()));
    CHECK(share.asking().isEmpty());
    CHECK(heard.what == "parcels");
    CHECK(heard.names == QStringList{"a.parcel", "b.parcel"});
    CHECK(heard.files == QByteArrayList{"first", "second"});

    share.openSome("parcels", false);
    CHECK(share.asking() == "some");
    share.answerSome({QUrl::fromLocalFile(folder.filePath("b.parcel"))});
    CHECK(heard.names == QStringList{"b.parcel"});

    heard.names.clear();
    share.openSome("parcels", false);
    share.answerSome({}); // thought otherwise
    CHECK(heard.names.isEmpty());
    share.take("parcels", {QUrl::fromLocalFile(folder.filePath("none"))});
    CHECK(heard.names.isEmpty());
    CHECK(heard.failed.contains("none"));
}

TEST_CASE("several files are saved into a folder, and nothing there is replaced")
{
    const QTemporaryDir folder;
    share::DialogShare share;
    Heard heard(share);
    share.saveSome({"to-a.parcel", "to-b.parcel"}, {"one", "two"});
    CHECK(share.asking() == "folder");
    share.answer(QUrl::fromLocalFile(folder.path()));
    CHECK_FALSE(heard.saved.isEmpty());
    CHECK(QDir(folder.path()).entryList(QDir::Files) == QStringList{"to-a.parcel", "to-b.parcel"});

    heard.saved.clear();
    share.saveSome({"to-c.parcel", "to-a.parcel"}, {"three", "other"});
    share.answer(QUrl::fromLocalFile(folder.path()));
    CHECK(heard.saved.isEmpty());
    CHECK(heard.failed.contains("to-a.parcel"));
    CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 2); // none of them was written
    QFile kept(folder.filePath("to-a.parcel"));
    REQUIRE(kept.open(QIODevice::ReadOnly));
    CHECK(kept.readAll() == "one");

    share.saveSome({"to-d.parcel"}, {"four"});
    share.answer({}); // thought otherwise
    share.openSome("parcels", true);
    share.answer(QUrl::fromLocalFile(folder.path()));
    CHECK(heard.names.size() == 2); // the folder was read, and nothing more was written into it
}
