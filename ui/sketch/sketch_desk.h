// SPDX-License-Identifier: GPL-3.0-or-later
// What lies on the drawing table: the open job's sketch, the sheet in view, what is chosen, how points are to
// be laid. Everything that changes the sketch goes through commit().
#pragma once

#include "core/editing/clip.h"
#include "core/editing/laying.h"
#include "ui/widgets/note.h"

#include <QObject>
#include <QString>

#include <vector>

namespace sealwalk::ui {

class JobSession;

class SketchDesk : public QObject
{
    Q_OBJECT

public:
    explicit SketchDesk(JobSession& session, QObject* parent = nullptr);

    [[nodiscard]] JobSession& session() const { return m_session; }
    /// An empty sketch while no job is open.
    [[nodiscard]] const model::Sketch& sketch() const;
    [[nodiscard]] const editing::PointSet& withReadings() const { return m_withReadings; }
    /// Whether the sketch may be changed: a job is open and neither submitted nor signed.
    [[nodiscard]] bool isOpenForWork() const;

    [[nodiscard]] model::SheetId sheet() const { return m_sheet; }
    [[nodiscard]] const model::Sheet* sheetInView() const { return sketch().sheet(m_sheet); }
    void setSheet(model::SheetId sheet);

    [[nodiscard]] const std::vector<model::JointId>& chosen() const { return m_chosen; }
    /// The one chosen joint; nullptr when none or several are.
    [[nodiscard]] const model::Joint* chosenJoint() const;
    [[nodiscard]] model::PointId chosenPoint() const { return m_point; }
    [[nodiscard]] bool isChosen(model::JointId joint) const;
    void choose(std::vector<model::JointId> joints);
    void choosePoint(model::PointId point);
    void chooseNothing();
    /// The joint and all that are in its group.
    [[nodiscard]] std::vector<model::JointId> withGroup(model::JointId joint) const;

    [[nodiscard]] const editing::Laying& laying() const { return m_laying; }
    void setLaying(const editing::Laying& laying);
    /// The kind the next ring, box, path or spot is drawn as.
    [[nodiscard]] model::JointKind kindFor(const geometry::Shape& shape) const;
    void setKindFor(const geometry::Shape& shape, model::JointKind kind);
    /// The name the next joint gets; empty: by its kind. Used up by drawing one.
    [[nodiscard]] const std::string& nextName() const { return m_nextName; }
    [[nodiscard]] bool nextIsSetup() const { return m_nextIsSetup; }
    void setNextName(std::string name, bool isSetup);

    /// Hands an edit to the session: true when it was carried out and stored. What went wrong is said in the
    /// note line, and nothing has changed then.
    bool commit(const Result<editing::Edit>& edit);
    void undo();
    void redo();

    [[nodiscard]] const editing::Clip& clip() const { return m_clip; }
    void setClip(editing::Clip clip) { m_clip = std::move(clip); }

    [[nodiscard]] bool showsRetired() const { return m_showsRetired; }
    void setShowsRetired(bool shows);

    void say(Severity severity, const QString& text, const QString& aside = {});

signals:
    void sketchChanged(); ///< also when another job is opened
    void sheetChanged();
    void chosenChanged();
    void layingChanged();
    void viewChanged(); ///< what is shown besides the sketch
    void noteRequested(sealwalk::ui::Severity severity, const QString& text, const QString& aside);

private:
    void takeJob();
    void takeSketch();
    void takeReadings();
    [[nodiscard]] std::size_t bearFirst() const;
    void dropFirst();

    JobSession& m_session;
    editing::PointSet m_withReadings;
    model::SheetId m_sheet;
    std::vector<model::JointId> m_chosen;
    model::PointId m_point;
    editing::Laying m_laying;
    model::JointKind m_ringKind = model::JointKind::ClampedFlange;
    model::JointKind m_boxKind = model::JointKind::OringSeal;
    model::JointKind m_pathKind = model::JointKind::WeldSeam;
    model::JointKind m_spotKind = model::JointKind::ThreadedFitting;
    std::string m_nextName;
    bool m_nextIsSetup = false;
    editing::Clip m_clip;
    bool m_showsRetired = true;
};

} // namespace sealwalk::ui
