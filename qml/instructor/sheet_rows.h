#pragma once

#include "qml/parts/row_list.h"

#include <QQmlEngine>
#include <QString>

namespace peelpack::instructor {

/// A mark as it stands, with what the preceptors gave and who changed it.
struct CheckedMarkRow {
    Q_GADGET
    QML_VALUE_TYPE(checkedMarkRow)
    Q_PROPERTY(int skill MEMBER skill)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString mark MEMBER mark)
    Q_PROPERTY(QString given MEMBER given)
    Q_PROPERTY(QString note MEMBER note)
    Q_PROPERTY(bool firstScrub MEMBER firstScrub)
    Q_PROPERTY(bool counts MEMBER counts)

public:
    int skill = 0;
    QString label;
    QString mark;
    QString given; ///< what the preceptor marked where that is not what stands; what each of several did
    QString note;  ///< why N/A
    bool firstScrub = false;
    bool counts = false; ///< Yes
    bool operator==(const CheckedMarkRow&) const = default;
};

/// What was signed beside what is in the log.
struct BesideRow {
    Q_GADGET
    QML_VALUE_TYPE(besideRow)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString wasSigned MEMBER wasSigned)
    Q_PROPERTY(QString logged MEMBER logged)
    Q_PROPERTY(bool differs MEMBER differs)

public:
    QString label;
    QString wasSigned;
    QString logged;
    bool differs = false;
    bool operator==(const BesideRow&) const = default;
};

/// A request that a mark be looked at again.
struct AskedReviewRow {
    Q_GADGET
    QML_VALUE_TYPE(askedReviewRow)
    Q_PROPERTY(int skill MEMBER skill)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(QString effect MEMBER effect)

public:
    int skill = 0;
    QString title;  ///< "Passed instruments: No, asks for Yes"
    QString reason; ///< the student's
    QString effect; ///< "If you accept it, the role becomes first scrub."
    bool operator==(const AskedReviewRow&) const = default;
};

/// A sheet of another student of the same operation.
struct OtherSheetRow {
    Q_GADGET
    QML_VALUE_TYPE(otherSheetRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString student MEMBER student)
    Q_PROPERTY(QString role MEMBER role)
    Q_PROPERTY(QString standing MEMBER standing)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(QString marks MEMBER marks)
    Q_PROPERTY(bool clashes MEMBER clashes)

public:
    QString key;
    QString student;
    QString role;
    QString standing;
    QString detail;
    QString marks;        ///< skills that are Yes
    bool clashes = false; ///< both are first scrub
    bool operator==(const OtherSheetRow&) const = default;
};

/// A specialty under which a procedure may be filed.
struct FilingRow {
    Q_GADGET
    QML_VALUE_TYPE(filingRow)
    Q_PROPERTY(int procedure MEMBER procedure)
    Q_PROPERTY(QString procedureName MEMBER procedureName)
    Q_PROPERTY(QString category MEMBER category)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(bool filed MEMBER filed)

public:
    int procedure = 0;
    QString procedureName;
    QString category; ///< id
    QString label;
    bool filed = false; ///< it is there now
    bool operator==(const FilingRow&) const = default;
};

class CheckedMarkRows : public parts::RowList<CheckedMarkRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class BesideRows : public parts::RowList<BesideRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class AskedReviewRows : public parts::RowList<AskedReviewRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class OtherSheetRows : public parts::RowList<OtherSheetRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class FilingRows : public parts::RowList<FilingRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

} // namespace peelpack::instructor
