// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/content_texts.h"

namespace sealwalk::report {

namespace {

using Visit = std::function<void(std::string&)>;

void eachOf(std::vector<Paragraph>& words, const Visit& visit)
{
    for (Paragraph& paragraph : words)
        visit(paragraph.text);
}

/// What a block holds, by its kind.
class Texts
{
public:
    explicit Texts(const Visit& visit)
        : m_visit(visit)
    {}

    void operator()(FactList& list) const
    {
        for (Fact& fact : list.facts) {
            m_visit(fact.label);
            m_visit(fact.value);
        }
        for (std::string& label : list.missing)
            m_visit(label);
    }
    void operator()(ReportTable& table) const
    {
        for (ReportColumn& column : table.columns)
            m_visit(column.title);
        for (std::vector<Cell>& row : table.rows)
            for (Cell& cell : row) {
                m_visit(cell.text);
                m_visit(cell.small);
            }
        m_visit(table.empty);
    }
    void operator()(Paragraph& paragraph) const { m_visit(paragraph.text); }
    void operator()(BarBlock& bars) const
    {
        eachText(bars.figure, m_visit);
        eachOf(bars.words, m_visit);
    }
    void operator()(FigureBlock& figure) const
    {
        eachText(figure.figure, m_visit);
        eachOf(figure.words, m_visit);
    }
    void operator()(MapBlock& /*map*/) const {}
    void operator()(ScaleBlock& /*scale*/) const {}
    void operator()(LegendBlock& /*legend*/) const {}
    void operator()(SignatureBlock& signatures) const
    {
        for (SignatureLine& line : signatures.lines) {
            m_visit(line.role);
            m_visit(line.name);
            m_visit(line.small);
        }
    }
    void operator()(PictureBlock& pictures) const
    {
        for (Photo& photo : pictures.photos)
            m_visit(photo.caption);
    }
    void operator()(SetupBlock& setup) const
    {
        SetupSketch& sketch = setup.sketch;
        each(sketch.object);
        for (std::optional<SetupPart>* part : {&sketch.ownPumps, &sketch.linePressure, &sketch.parallelPump})
            if (*part)
                each(**part);
        for (std::vector<SetupPart>* parts : {&sketch.leaks, &sketch.leaksAtInlet})
            for (SetupPart& part : *parts)
                each(part);
        for (SetupPart* part : {&sketch.connection, &sketch.hose, &sketch.detector})
            each(*part);
    }

private:
    void each(SetupPart& part) const
    {
        for (std::string& line : part.lines)
            m_visit(line);
    }

    const Visit& m_visit;
};

} // namespace

void eachText(ReportContent& content, const Visit& visit)
{
    for (std::string* text : {&content.title, &content.subtitle, &content.date, &content.state,
                              &content.statement.headline, &content.statement.text})
        visit(*text);
    for (std::string& line : content.footer)
        visit(line);
    const Texts texts(visit);
    for (Section& section : content.sections) {
        visit(section.title);
        visit(section.note);
        for (Block& block : section.blocks)
            std::visit(texts, block);
    }
}

void eachText(Figure& figure, const Visit& visit)
{
    visit(figure.title);
    visit(figure.spoken);
    visit(figure.empty);
    visit(figure.x.unit);
    visit(figure.y.unit);
    for (Series& series : figure.series)
        visit(series.name);
    for (Level& level : figure.levels)
        visit(level.text);
    for (Moment& moment : figure.moments)
        visit(moment.text);
    for (Span& span : figure.spans)
        visit(span.text);
    for (Strip& strip : figure.strips)
        visit(strip.text);
    for (Area& area : figure.areas)
        visit(area.text);
    for (Flag& flag : figure.flags)
        visit(flag.text);
    for (Series& series : figure.residuals)
        visit(series.name);
}

void eachText(BarFigure& figure, const Visit& visit)
{
    visit(figure.title);
    visit(figure.spoken);
    visit(figure.unit);
    visit(figure.empty);
    for (Bar& bar : figure.bars) {
        visit(bar.name);
        visit(bar.total);
        for (BarPart& part : bar.parts)
            visit(part.label);
    }
    for (BarFigure::Limit& limit : figure.limits)
        visit(limit.text);
}

} // namespace sealwalk::report
