// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/checks_delegate.h"

#include "core/analysis/review_checks.h"
#include "ui/render/theme.h"
#include "ui/signoff/checks_model.h"

#include <QPainter>

namespace sealwalk::ui {

namespace {

using analysis::CheckState;
using render::Role;
using render::TextSize;

constexpr int kHeadHeight = 30;
constexpr int kRowHeight = 46;
constexpr int kOrderHeight = 26;

/// Full block stops, half block needs a word, outline is in order: by shape first, colour second.
void paintBlock(QPainter& painter, const render::Theme& theme, QPointF corner, CheckState state, bool settled)
{
    const QRectF block(corner, QSizeF(8, 18));
    const Role role = state == CheckState::Stops       ? Role::Over
                      : state == CheckState::NeedsWord ? (settled ? Role::Within : Role::Unsure)
                                                       : Role::InkSoft;
    painter.setPen(QPen(theme.colour(role), 1.2));
    painter.setBrush(Qt::NoBrush);
    if (state == CheckState::Stops)
        painter.fillRect(block, theme.colour(role));
    else
        painter.drawRect(block);
    if (state == CheckState::NeedsWord)
        painter.fillRect(QRectF(block.left(), block.center().y(), block.width(), block.height() / 2),
                         theme.colour(role));
}

} // namespace

void ChecksDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const
{
    const render::Theme& theme = render::Theme::of(option.widget);
    const QRectF row = option.rect;
    const auto state = static_cast<CheckState>(index.data(ChecksModel::StateRole).toInt());
    const bool head = index.data(ChecksModel::IsHeadRole).toBool();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    painter->fillRect(row, theme.colour(head ? Role::Window : chosen ? Role::AccentWash : Role::Field));
    painter->setPen(theme.colour(Role::Line));
    painter->drawLine(row.bottomLeft(), row.bottomRight());

    const double left = row.left() + render::kGapApart;
    const double right = row.right() - render::kGapApart;
    if (head) {
        painter->setFont(render::font(TextSize::Strong, render::Weight::Bold));
        painter->setPen(theme.colour(Role::Ink));
        painter->drawText(QRectF(left, row.top(), row.width(), row.height()), Qt::AlignVCenter,
                          index.data(ChecksModel::QuestionRole).toString());
        painter->setPen(theme.colour(state == CheckState::Stops       ? Role::Over
                                     : state == CheckState::NeedsWord ? Role::Unsure
                                                                      : Role::Ink));
        painter->drawText(QRectF(left, row.top(), right - left, row.height()),
                          Qt::AlignVCenter | Qt::AlignRight, index.data(ChecksModel::AsideRole).toString());
        painter->restore();
        return;
    }
    const bool settled = index.data(ChecksModel::SettledRole).toBool();
    paintBlock(*painter, theme, {left, row.top() + 4}, state, settled);
    const QString aside =
        settled ? ChecksModel::tr("word given") : index.data(ChecksModel::AsideRole).toString();
    painter->setFont(render::font(TextSize::Text));
    // Only as much as it takes: the answer has the rest.
    const double beside =
        aside.isEmpty() ? 0.0 : painter->fontMetrics().horizontalAdvance(aside) + render::kGapApart;
    const double text = left + 22;
    const double room = right - beside - text;
    const auto line = [&](render::Weight weight, Role ink, double top, const QString& words) {
        painter->setFont(render::font(TextSize::Text, weight));
        painter->setPen(theme.colour(ink));
        painter->drawText(QRectF(text, row.top() + top, room, 20), Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(words, Qt::ElideRight, static_cast<int>(room)));
    };
    if (state == CheckState::InOrder) {
        line(render::Weight::Normal, Role::InkSoft, 3, index.data(ChecksModel::QuestionRole).toString());
    } else {
        line(render::Weight::Bold, Role::Ink, 4, index.data(ChecksModel::QuestionRole).toString());
        line(render::Weight::Normal, Role::Ink, 23, index.data(ChecksModel::AnswerRole).toString());
    }
    painter->setFont(render::font(TextSize::Text));
    const bool remarked = index.data(ChecksModel::RemarkedRole).toBool();
    painter->setPen(theme.colour(settled ? Role::Within : remarked ? Role::Unsure : Role::InkSoft));
    painter->drawText(QRectF(right - beside, row.top(), beside, row.height()),
                      Qt::AlignRight | Qt::AlignVCenter, aside);
    painter->restore();
}

QSize ChecksDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const
{
    if (index.data(ChecksModel::IsHeadRole).toBool())
        return {520, kHeadHeight};
    const auto state = static_cast<CheckState>(index.data(ChecksModel::StateRole).toInt());
    return {520, state == CheckState::InOrder ? kOrderHeight : kRowHeight};
}

} // namespace sealwalk::ui
