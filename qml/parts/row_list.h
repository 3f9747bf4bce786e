#pragma once

#include <QAbstractListModel>

#include <vector>

namespace peelpack::parts {

/// A list model of values: each row is a gadget under the one role "row". What is put replaces all rows, or, where only
/// some differ, changes those.
template <class Row>
class RowList : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    static constexpr int rowRole = Qt::UserRole;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override
    {
        const auto place = static_cast<std::size_t>(index.row());
        return role == rowRole && index.isValid() && place < m_rows.size() ? QVariant::fromValue(m_rows[place])
                                                                           : QVariant();
    }
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override { return {{rowRole, "row"}}; }

    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
    void put(std::vector<Row> rows)
    {
        if (rows.size() != m_rows.size()) {
            beginResetModel();
            m_rows = std::move(rows);
            endResetModel();
            return;
        }
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (!(rows[i] == m_rows[i])) {
                m_rows[i] = std::move(rows[i]);
                const QModelIndex at = index(static_cast<int>(i));
                Q_EMIT dataChanged(at, at);
            }
        }
    }

private:
    std::vector<Row> m_rows;
};

} // namespace peelpack::parts
