// SPDX-License-Identifier: GPL-3.0-or-later
// A report as data: statements, facts, tables, maps, plots, in order. Draws nothing, knows no paper.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/report/bars.h"
#include "core/report/figure.h"
#include "core/report/map_content.h"
#include "core/report/setup_sketch.h"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sealwalk::report {

struct Fact
{
    std::string label;
    std::string value;
};

/// Set in two columns.
struct FactList
{
    std::vector<Fact> facts;
    std::vector<std::string> missing = {}; ///< labels of what nobody recorded, named together below
};

struct PlateMark
{
    PointState state = PointState::NotSprayed;
    Teeth teeth = Teeth::None;
    bool temporary = false;
    bool overdue = false;
    bool conceded = false;
};

struct Cell
{
    std::string text = {};
    std::string small = {}; ///< a second line
    std::optional<PlateMark> plate = {};
    std::optional<analysis::Verdict> verdict = {}; ///< the glyph against the limit, and its colour
    bool strong = false;
};

struct ReportColumn
{
    std::string title;
    double share = 1.0; ///< of the width, relative
    bool right = false; ///< set flush right
};

struct ReportTable
{
    std::vector<ReportColumn> columns;
    std::vector<std::vector<Cell>> rows; ///< as many cells as columns
    std::string empty = {};              ///< said instead when there are no rows
};

struct Paragraph
{
    enum class Look
    {
        Plain,
        Strong,
        Soft,
    };
    std::string text;
    Look look = Look::Plain;
};

struct BarBlock
{
    BarFigure figure;
    std::vector<Paragraph> words; ///< beside it
};

struct FigureBlock
{
    Figure figure;
    std::vector<Paragraph> words; ///< beside it
};

struct MapBlock
{
    std::shared_ptr<const MapContent> map;
};

/// The set-up, drawn.
struct SetupBlock
{
    SetupSketch sketch;
};

/// The decade ruler.
struct ScaleBlock
{
    MapScale scale;
};

/// The marks with their words.
struct LegendBlock
{};

struct SignatureLine
{
    std::string role;
    std::string name; ///< "not yet" where nobody has signed
    std::string small;
};

struct SignatureBlock
{
    std::vector<SignatureLine> lines;
};

struct Photo
{
    std::string sha256;
    std::string caption;
};

/// Photos that belong together, two to a row.
struct PictureBlock
{
    std::vector<Photo> photos;
};

using Block = std::variant<FactList, ReportTable, Paragraph, BarBlock, FigureBlock, MapBlock, ScaleBlock,
                           LegendBlock, SignatureBlock, PictureBlock, SetupBlock>;

struct Section
{
    std::string title;
    std::string note; ///< beside the title
    std::vector<Block> blocks;
};

struct Statement
{
    analysis::Verdict verdict = analysis::Verdict::NoAnswer; ///< which glyph stands beside it
    std::string headline;
    std::string text; ///< what is claimed, and what is not
};

struct ReportContent
{
    std::string title;
    std::string subtitle; ///< object, job
    std::string date;
    std::string state;               ///< "draft", "signed"
    std::vector<std::string> footer; ///< at most two lines
    Statement statement;
    std::vector<Section> sections;
};

} // namespace sealwalk::report
