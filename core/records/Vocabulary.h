// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

// The vocabularies of the records; the words are the keys in files, never translated.
namespace lastrivet {

/// Unit of a weight.
enum class WeightUnit {
    Kilograms,
    Pounds,
};
template <> struct Words<WeightUnit> {
    static constexpr std::array<std::string_view, 2> list{"kg", "lb"};
};

/// Where the aeroplane comes from.
enum class Origin {
    Kit,
    Plans,
};
template <> struct Words<Origin> {
    static constexpr std::array<std::string_view, 2> list{"kit", "plans"};
};

/// The units a person likes to read.
enum class UnitSystem {
    Metric,
    Imperial,
};
template <> struct Words<UnitSystem> {
    static constexpr std::array<std::string_view, 2> list{"metric", "imperial"};
};

/// What a person is in this build.
enum class Role {
    Builder,
    Helper,
    EarlierBuilder,
    Commercial,
    Designer,
    Adviser,
    Inspector,
};
template <> struct Words<Role> {
    static constexpr std::array<std::string_view, 7> list{
        "builder", "helper", "earlier_builder", "commercial", "designer", "adviser", "inspector"};
};

/// What a part is.
enum class ComponentKind {
    Assembly,
    ControlSurface,
    LiftingSurface,
    FuselageSection,
    FuelTank,
    EngineInstallation,
    Undercarriage,
    FlightControls,
    Electrical,
    FuelSystem,
    Cabin,
    Part,
};
template <> struct Words<ComponentKind> {
    static constexpr std::array<std::string_view, 12> list{
        "assembly",   "control_surface",     "lifting_surface", "fuselage_section",
        "fuel_tank",  "engine_installation", "undercarriage",   "flight_controls",
        "electrical", "fuel_system",         "cabin",           "part"};
};

/// What a part is made of.
enum class Construction {
    Metal,
    Wood,
    Composite,
    Fabric,
    Tube,
    Mixed,
};
template <> struct Words<Construction> {
    static constexpr std::array<std::string_view, 6> list{"metal",  "wood", "composite",
                                                          "fabric", "tube", "mixed"};
};

/// What kind of work a session was.
enum class WorkKind {
    Fabrication,
    Assembly,
    Finishing,
    Rework,
    Inspection,
    Planning,
    Other,
};
template <> struct Words<WorkKind> {
    static constexpr std::array<std::string_view, 7> list{
        "fabrication", "assembly", "finishing", "rework", "inspection", "planning", "other"};
};

/// A region of the structure, or the whole aircraft before its first flight.
enum class ClosingScope {
    Region,
    Aircraft,
};
template <> struct Words<ClosingScope> {
    static constexpr std::array<std::string_view, 2> list{"region", "aircraft"};
};

/// Who closed it.
enum class MadeBy {
    Builder,
    EarlierBuilder,
    Factory,
};
template <> struct Words<MadeBy> {
    static constexpr std::array<std::string_view, 3> list{"builder", "earlier_builder", "factory"};
};

/// Why work stops until somebody has looked.
enum class HoldPointKind {
    OwnCheck,
    ToolAndDebrisCheck,
    IndependentCheck,
    PreCover,
    Stage,
    TechnicalVisit,
    Final,
};
template <> struct Words<HoldPointKind> {
    static constexpr std::array<std::string_view, 7> list{"own_check",
                                                          "tool_and_debris_check",
                                                          "independent_check",
                                                          "pre_cover",
                                                          "stage",
                                                          "technical_visit",
                                                          "final"};
};

/// Whose word is needed, in rising rank: a higher one may stand in for a lower.
enum class SignerRole {
    Builder,
    Adviser,
    Inspector,
};
template <> struct Words<SignerRole> {
    static constexpr std::array<std::string_view, 3> list{"builder", "adviser", "inspector"};
};

/// What an inspection is for.
enum class InspectionKind {
    PreCover,
    Stage,
    TechnicalVisit,
    Final,
    WorkshopVisit,
};
template <> struct Words<InspectionKind> {
    static constexpr std::array<std::string_view, 5> list{"pre_cover", "stage", "technical_visit",
                                                          "final", "workshop_visit"};
};

/// What the signer found.
enum class SignOffResult {
    Accepted,
    AcceptedWithFindings,
    Rejected,
};
template <> struct Words<SignOffResult> {
    static constexpr std::array<std::string_view, 3> list{"accepted", "accepted_with_findings",
                                                          "rejected"};
};

/// How the signer saw the work.
enum class Seen {
    OnSite,
    ByPhoto,
    ByVideo,
    ByMessage,
};
template <> struct Words<Seen> {
    static constexpr std::array<std::string_view, 4> list{"on_site", "by_photo", "by_video",
                                                          "by_message"};
};

/// How much a squawk matters.
enum class Severity {
    Airworthiness,
    Workmanship,
    Cosmetic,
};
template <> struct Words<Severity> {
    static constexpr std::array<std::string_view, 3> list{"airworthiness", "workmanship",
                                                          "cosmetic"};
};

/// What was decided about a deviation.
enum class Decision {
    Approved,
    Rejected,
};
template <> struct Words<Decision> {
    static constexpr std::array<std::string_view, 2> list{"approved", "rejected"};
};

/// Unit of an arm.
enum class ArmUnit {
    Millimetres,
    Inches,
};
template <> struct Words<ArmUnit> {
    static constexpr std::array<std::string_view, 2> list{"mm", "in"};
};

/// What kind of paper the maker or the authority sent.
enum class BulletinKind {
    Bulletin,
    Letter,
    Directive,
    DrawingChange,
};
template <> struct Words<BulletinKind> {
    static constexpr std::array<std::string_view, 4> list{"bulletin", "letter", "directive",
                                                          "drawing_change"};
};

/// Unit of a torque.
enum class TorqueUnit {
    InchPounds,
    FootPounds,
    NewtonMetres,
};
template <> struct Words<TorqueUnit> {
    static constexpr std::array<std::string_view, 3> list{"in-lb", "ft-lb", "N-m"};
};

/// What keeps a fastener from turning.
enum class Locking {
    SelfLockingNut,
    SplitPin,
    SafetyWire,
    JamNut,
    LockTab,
    ThreadLocker,
    None,
};
template <> struct Words<Locking> {
    static constexpr std::array<std::string_view, 7> list{
        "self_locking_nut", "split_pin",     "safety_wire", "jam_nut",
        "lock_tab",         "thread_locker", "none"};
};

/// Unit of a temperature.
enum class TemperatureUnit {
    Celsius,
    Fahrenheit,
};
template <> struct Words<TemperatureUnit> {
    static constexpr std::array<std::string_view, 2> list{"C", "F"};
};

/// What became of the test sample of a batch.
enum class Sample {
    None,
    Kept,
    Good,
    Failed,
};
template <> struct Words<Sample> {
    static constexpr std::array<std::string_view, 4> list{"none", "kept", "good", "failed"};
};

/// What a file is.
enum class MediaKind {
    Photo,
    Video,
    Document,
};
template <> struct Words<MediaKind> {
    static constexpr std::array<std::string_view, 3> list{"photo", "video", "document"};
};

/// What a picture shows.
enum class Shows {
    Interior,
    Exterior,
    BuilderAtWork,
    Defect,
    Repair,
    SignedSheet,
    Receipt,
};
template <> struct Words<Shows> {
    static constexpr std::array<std::string_view, 7> list{
        "interior", "exterior", "builder_at_work", "defect", "repair", "signed_sheet", "receipt"};
};

/// A mark drawn over a picture.
enum class AnnotationShape {
    Arrow,
    Circle,
    Text,
};
template <> struct Words<AnnotationShape> {
    static constexpr std::array<std::string_view, 3> list{"arrow", "circle", "text"};
};

} // namespace lastrivet
