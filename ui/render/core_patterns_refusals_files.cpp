// SPDX-License-Identifier: GPL-3.0-or-later
// Job files, their parts, and files in general.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> fileRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "the file is empty, so it is not a job file"),
        QT_TRANSLATE_NOOP("Core", "no memory is left to read the zip"),
        QT_TRANSLATE_NOOP("Core", "this is not a zip, so it is not a job file"),
        QT_TRANSLATE_NOOP("Core", "the zip is truncated or its directory is damaged"),
        QT_TRANSLATE_NOOP("Core", "entry %1 of the zip's directory is damaged"),
        QT_TRANSLATE_NOOP("Core", "the zip's member %1 has a name that job files do not use (lower-case "
                                  "letters, digits, . - _ and /)"),
        QT_TRANSLATE_NOOP("Core", "the zip's member %1 is encrypted; job files are not"),
        QT_TRANSLATE_NOOP("Core", "the zip's member %1 is packed by method %2; stored or deflated is right"),
        QT_TRANSLATE_NOOP("Core", "the zip's member %1 is %2 bytes long; at most %3 are read"),
        QT_TRANSLATE_NOOP("Core", "%1 is damaged: its bytes do not match its checksum or length"),
        QT_TRANSLATE_NOOP("Core", "the zip has %1 members; at most %2 are read"),
        QT_TRANSLATE_NOOP("Core", "the zip's members are longer than %1 bytes together"),
        QT_TRANSLATE_NOOP("Core", "the zip has two members named %1"),
        QT_TRANSLATE_NOOP("Core", "job.%1[%2].id: this identity is empty or used twice in the job"),
        QT_TRANSLATE_NOOP("Core", "job.%1[%2]: point %3 is not in the sketch"),
        QT_TRANSLATE_NOOP("Core", "job.%1[%2]: round %3 is not in the job"),
        QT_TRANSLATE_NOOP("Core", "job.id: a job needs an identity"),
        QT_TRANSLATE_NOOP("Core", "job.object: the job belongs to another object than the one beside it"),
        QT_TRANSLATE_NOOP("Core", "object.name: an object needs a name"),
        QT_TRANSLATE_NOOP("Core", "job.number: a job's number is not negative"),
        QT_TRANSLATE_NOOP("Core", "%1: %2 is outside %3 to %4"),
        QT_TRANSLATE_NOOP("Core", "%1: %2 is below zero"),
        QT_TRANSLATE_NOOP("Core", "job.rounds[%1]: the repair it proves is not in the job"),
        QT_TRANSLATE_NOOP("Core", "job.readings[%1]: it corrects a reading that is not before it"),
        QT_TRANSLATE_NOOP("Core", "job.voids[%1]: the reading it names is not in the job"),
        QT_TRANSLATE_NOOP(
            "Core", "job.void_measurements[%1]: the measurement it names is not in the job, or void already"),
        QT_TRANSLATE_NOOP("Core", "job.backgrounds[%1]: %2 times but %3 values"),
        QT_TRANSLATE_NOOP("Core", "job.backgrounds[%1]: a swing read by eye goes with one value, not %2"),
        QT_TRANSLATE_NOOP("Core", "job.readings[%1]: the point sprayed is said to be taped off"),
        QT_TRANSLATE_NOOP("Core", "job.rise_tests[%1]: %2 times but %3 pressures and %4 temperatures"),
        QT_TRANSLATE_NOOP("Core", "%1 lower-case hexadecimal digits are expected here"),
        QT_TRANSLATE_NOOP("Core", "the folder to write to does not exist"),
        QT_TRANSLATE_NOOP("Core", "this is a folder; give the name of a file"),
        QT_TRANSLATE_NOOP("Core", "cannot be written: %1"),
        QT_TRANSLATE_NOOP("Core", "there is no such file"),
        QT_TRANSLATE_NOOP("Core", "cannot be read: %1"),
        QT_TRANSLATE_NOOP("Core", "the file is longer than %1 bytes"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a shape; known are ring, rounded rectangle, path, spot"),
        QT_TRANSLATE_NOOP("Core", "a picture's name is its SHA-256 and .png, .jpg, .svg or .pdf"),
        QT_TRANSLATE_NOOP("Core", "%1 was changed: its bytes do not match its name"),
        QT_TRANSLATE_NOOP("Core", "the picture %1 is there twice"),
        QT_TRANSLATE_NOOP("Core", "the picture %1 that job.json refers to is missing"),
        QT_TRANSLATE_NOOP("Core", "job.json does not refer to the picture %1"),
        QT_TRANSLATE_NOOP("Core", "there is no job.json in this zip, so it is not a job file"),
        QT_TRANSLATE_NOOP("Core", "signatures.json is missing; every job file has one"),
        QT_TRANSLATE_NOOP("Core", "%1 does not belong in a job file"),
        QT_TRANSLATE_NOOP("Core", "the picture %1 that the job refers to is missing"),
        QT_TRANSLATE_NOOP("Core",
                          "the picture %1 is named wrongly; its SHA-256 and png, jpg, svg or pdf are right"),
        QT_TRANSLATE_NOOP("Core", "the picture %1 was changed since it was added"),
        QT_TRANSLATE_NOOP("Core", "\"format\" is missing; \"%1\" is right"),
        QT_TRANSLATE_NOOP("Core", "this was written by a newer Sealwalk (format \"%1\"); this one reads up "
                                  "to \"%2\", so use the newer program"),
        QT_TRANSLATE_NOOP("Core", "\"format\" is \"%1\"; \"%2\" is right"),
        QT_TRANSLATE_NOOP("Core", "\"format\" is \"%1\"; \"%2\" is right for what is in it"),
        QT_TRANSLATE_NOOP("Core", "must be an object in braces"),
        QT_TRANSLATE_NOOP("Core", "must be text in quotes"),
        QT_TRANSLATE_NOOP("Core", "must be true or false"),
        QT_TRANSLATE_NOOP("Core", "must be a number"),
        QT_TRANSLATE_NOOP("Core", "must be a whole number"),
        QT_TRANSLATE_NOOP("Core", "the whole number is too large"),
        QT_TRANSLATE_NOOP("Core", "a time is written with milliseconds and offset, %1"),
        QT_TRANSLATE_NOOP("Core", "must be a place [x, y] in millimetres"),
        QT_TRANSLATE_NOOP("Core", "a UUID is written in lower case here"),
        QT_TRANSLATE_NOOP("Core", "must be a list in square brackets"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is missing"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not known; known are %2"),
        QT_TRANSLATE_NOOP("Core", "is left out when it is empty"),
        QT_TRANSLATE_NOOP("Core", "the document"),
        QT_TRANSLATE_NOOP("Core", "%1 members are too many for a job file; %2 may be in one"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" cannot be a job file's member: wrong characters, or there already"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 makes the job file too large; a member may have %2 bytes, all together %3"),
        QT_TRANSLATE_NOOP("Core", "it holds more than %1 values"),
        QT_TRANSLATE_NOOP("Core", "it is nested deeper than %1 levels"),
        QT_TRANSLATE_NOOP("Core", "the name \"%1\" stands twice in one object"),
        QT_TRANSLATE_NOOP("Core", "the JSON is %1 bytes long; at most %2 are read"),
        QT_TRANSLATE_NOOP("Core", "the text ends in the middle of the JSON"),
        QT_TRANSLATE_NOOP("Core", "this is not JSON (RFC 8259, UTF-8)"),
        QT_TRANSLATE_NOOP("Core", "the machine has no memory left for this JSON"),
        QT_TRANSLATE_NOOP("Core", "a number is too large; JSON numbers end at 1.797e308"),
        QT_TRANSLATE_NOOP("Core", "the job belongs to another test object than the one it came with"),
        QT_TRANSLATE_NOOP("Core", "the readings are not in the order of storing: %1 follows %2"),
        QT_TRANSLATE_NOOP("Core", "this job is in the history already, as number %1"),
        QT_TRANSLATE_NOOP(
            "Core", "this job is in the history already, as number %1, and went on in both places, as far "
                    "as can be told: they differ in %2; nothing was changed. Make that the same in "
                    "both and take it in again, or go on with one of the two and enter what the "
                    "other has more"),
        QT_TRANSLATE_NOOP("Core", "this job is in the history already, as number %1; nothing was added"),
        QT_TRANSLATE_NOOP("Core", "job %1 was not taken in"),
        QT_TRANSLATE_NOOP("Core", "point numbers %1 mean other places in this job than in job %2; points are "
                                  "compared by identity, not by number"),
        QT_TRANSLATE_NOOP("Core", "another object here is called \"%1\" too; they are kept apart until a "
                                  "person says in its facts that they are one"),
        QT_TRANSLATE_NOOP("Core", "number %1 is taken here; the job is number %2 in this history"),
        QT_TRANSLATE_NOOP("Core",
                          "the object's %1 is \"%2\" here and \"%3\" in the file; it stays as it is here"),
        QT_TRANSLATE_NOOP("Core", "name"),
        QT_TRANSLATE_NOOP("Core", "tag"),
        QT_TRANSLATE_NOOP("Core", "place"),
        QT_TRANSLATE_NOOP("Core", "the object's volume, limits, pumps or note differ between here and the "
                                  "file; they stay as they are here"),
        QT_TRANSLATE_NOOP("Core", "picture %1 is missing: %2"),
        QT_TRANSLATE_NOOP("Core", "picture %1 was changed: its bytes do not match its name"),
        QT_TRANSLATE_NOOP("Core", "open or make a history first; the job is taken into it"),
        QT_TRANSLATE_NOOP("Core", "Permission denied"),
        QT_TRANSLATE_NOOP("Core", "No such file or directory"),
        QT_TRANSLATE_NOOP("Core", "No space left on device"),
        QT_TRANSLATE_NOOP("Core", "Read-only file system"),
        QT_TRANSLATE_NOOP("Core", "Input/output error"),
        QT_TRANSLATE_NOOP("Core", "Is a directory"),
    };
    return kAll;
}

} // namespace sealwalk::render
