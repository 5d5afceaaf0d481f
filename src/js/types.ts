/** What every function throws: an Error with a code for programs and, for a job, the path of the field. */
export interface SkimwrightError extends Error {
  /** "job", "length", "unit", or what is wrong with a link or a file of jobs. */
  code:
    | "job" | "length" | "unit" | "internal"
    | "empty" | "too-long" | "not-a-link" | "newer" | "damaged" | "several" | "beyond-limits" | "too-large"
    | "not-json" | "not-ours" | "form" | "lines";
  /** Such as "part.sections[0].length"; empty when no one field is meant. */
  path: string;
}

export type LengthUnit = "mm" | "in";

/**
 * A number as typed, with its unit: "25.4 mm", "1 3/8 in", "120 m/min", "0.1 mm/rev", "2000 rpm", "13 s", "85 %",
 * "40 N/µm", "3 pcs", "31 °C". Money is "62.50 ¤", in the one currency of the job.
 */
export type Quantity = string;

/** A job of which any field may be left out; it then has the value of the default job. null is an empty field. */
export interface JobInput {
  version?: 1 | 2;
  title?: string;
  part?: Partial<Part>;
  wanted?: Partial<Wanted>;
  shop?: Partial<Omit<Shop, "edge" | "machine" | "rates">> & {
    edge?: Partial<Edge>;
    machine?: Partial<Omit<Machine, "learned">> & { learned?: Partial<Learned> };
    rates?: Partial<Rates>;
    instruments?: Partial<Instrument>[];
  };
  setup?: Partial<Omit<Setup, "near" | "far">> & { near?: Partial<Plane>; far?: Partial<Plane> };
  record?: Partial<JobRecord>;
}

/** One part, what is wanted of it, and the shop it is done in. */
export interface Job {
  version: 2;
  title: string;
  part: Part;
  wanted: Wanted;
  shop: Shop;
  setup: Setup;
  record: JobRecord;
}

/** The part as received. Sections and features on the shank, from the shoulder outward; null is not known. */
export interface Part {
  material: Material;
  /** What it is more exactly, by the code of a group of its material; null: the usual one. */
  cutting_group: string | null;
  /** How a file takes to it, where its hardness was not measured. */
  file_bite: "cuts" | "bites" | "scratches" | "skates" | null;
  head_diameter: Quantity;
  head_length: Quantity;
  head_beyond: HeadPiece[];
  runout: Quantity;
  /** null: as near the shoulder. */
  end_runout: Quantity | null;
  surface_hardness: Quantity | null;
  case_depth: Quantity | null;
  core_hardness: Quantity | null;
  /** null: the sum of the sections. */
  shank_length: Quantity | null;
  sections: Section[];
  features: Feature[];
  bores: Bore[];
}

/** A further piece of the head, away from the shank. */
export interface HeadPiece {
  diameter: Quantity;
  length: Quantity;
}

/** How far from an end of the shank the nearer side is; of a cross hole and a Woodruff keyway the middle. */
export interface Place {
  from: "shoulder" | "free-end";
  start: Quantity;
}

export type Material =
  | "low-carbon-steel" | "medium-carbon-steel" | "alloy-steel-tempered" | "alloy-steel-hard"
  | "tool-steel-annealed" | "hardened-steel" | "case-hardened-steel" | "high-speed-steel-hard"
  | "stainless-martensitic" | "stainless-austenitic" | "grey-iron" | "ductile-iron"
  | "aluminium-alloy" | "brass" | "bronze" | "titanium-alloy";

/** An outer section; without a place it begins where the one before ends. */
export type Section = Turned & Partial<Place>;

export type Turned =
  | { kind: "cylinder" | "groove" | "relief"; diameter: Quantity; length: Quantity }
  | {
      kind: "taper";
      shoulder_diameter: Quantity;
      end_diameter: Quantity;
      length: Quantity;
      diameter_error?: Quantity | null;
      length_error?: Quantity | null;
    }
  | { kind: "standard-taper"; taper: string; past_gauge: Quantity; length?: Quantity | null }
  /** The ratio as "20 :1" for 1 in 20; it and the angle are negative where the taper grows outward. */
  | { kind: "ratio-taper"; shoulder_diameter: Quantity; ratio: Quantity; length: Quantity }
  | { kind: "angle-taper"; shoulder_diameter: Quantity; angle: Quantity; length: Quantity }
  | { kind: "thread"; thread: string; length: Quantity };

/** What is cut into the shank. */
export type Feature =
  | (Place & (
      | { kind: "flat"; over: Quantity; flats: "one" | "two"; length: Quantity }
      | { kind: "keyway"; width: Quantity; depth: Quantity; length: Quantity }
      | { kind: "woodruff-keyway"; width: Quantity; depth: Quantity; disc: Quantity }
      | { kind: "cross-hole"; diameter: Quantity }
    ))
  | {
      kind: "tang";
      thickness: Quantity;
      length: Quantity;
      slot_width?: Quantity | null;
      slot_depth?: Quantity | null;
    };

/** A hole along the axis, depths from the end that it was made from. */
export type Bore = { end?: "free-end" | "head-end"; off_centre?: Quantity | null } & (
  | { kind: "drilled"; diameter: Quantity; depth: Quantity; bottom: BoreBottom }
  | {
      kind: "stepped";
      diameter: Quantity;
      depth: Quantity;
      step_diameter: Quantity;
      step_depth: Quantity;
      bottom: BoreBottom;
    }
  | { kind: "tapped"; thread: string; thread_depth: Quantity; drill_depth: Quantity }
  | { kind: "reamed"; diameter: Quantity; ream_depth: Quantity; drill_depth: Quantity }
  | { kind: "through"; diameter: Quantity }
  | { kind: "centre-hole"; centre_drill: string }
);

export type BoreBottom = "drill-point" | "flat";

/** What is wanted of the shank. */
export interface Wanted {
  diameter: Quantity;
  tolerance: Tolerance;
  length: Quantity;
  shoulder_radius: Quantity;
  end_chamfer: Quantity;
  countersink: Quantity | null;
  /** Ra of the turned shank, such as "1.6 µm"; null: nothing is asked. */
  roughness: Quantity | null;
  receiver: Receiver;
  receiver_depth: Quantity | null;
  least_grip: Quantity | null;
  duty: Duty;
}

/** What the finished shank goes into. */
export type Receiver =
  | { kind: "own"; edge?: Quantity | null }
  | { kind: "collet"; collet: string }
  | { kind: "side-lock"; shank: string }
  | { kind: "hydraulic" }
  | { kind: "plain-bore"; hole: string; edge?: Quantity | null }
  | { kind: "bearing"; load: string; ring_chamfer: Quantity }
  | {
      kind: "sleeve";
      duty: string;
      material: Material;
      outside: Quantity;
      edge?: Quantity | null;
    };

/** What the finished shank has to carry; null is not known. Torque itself, or power and speed: the larger counts. */
export interface Duty {
  torque: Quantity | null;
  side_load: Quantity | null;
  overhang: Quantity | null;
  power: Quantity | null;
  speed: Quantity | null;
}

export type ShaftClass =
  | "h5" | "h6" | "h7" | "h8" | "h9" | "g6" | "k6" | "js5" | "j5" | "j6" | "js6" | "k5" | "m5" | "m6"
  | "n6" | "p6" | "r6" | "s6" | "f7" | "g5" | "h11";

export type Tolerance =
  | { class: ShaftClass }
  | { upper: Quantity; lower: Quantity };

/** What the job is done with. null is the usual value for the material, the tool or the class of machine. */
export interface Shop {
  tool: "high-speed-steel" | "brazed-carbide" | "indexable-carbide" | "cubic-boron-nitride" | "indexable-flat" | "ceramic"
    | "grinding";
  edge: Edge;
  machine: Machine;
  /** What the passes are chosen for. */
  aim: "least-time" | "least-cost";
  cut_off_method: "hand-disc" | "chop-wheel" | "saw" | "parting-tool";
  kerf: Quantity | null;
  facing_stock: Quantity;
  centre_order: "after-facing" | "before-facing";
  /** The most that is allowed, on radius. */
  rough_infeed: Quantity | null;
  last_cut: Quantity;
  polishing_stock: Quantity;
  /** The highest that is allowed, and so are the two feeds. */
  cutting_speed: Quantity | null;
  rough_feed: Quantity | null;
  finish_feed: Quantity | null;
  top_speed: Quantity;
  approach: Quantity;
  set_time: Quantity;
  return_time: Quantity;
  measure_time: Quantity;
  polish_time: Quantity;
  /** What is left out takes the usual time. */
  times: Partial<Record<Step, StepTime>>;
  rates: Rates;
  /** At most 8. */
  instruments: Instrument[];
}

/** A measuring instrument. A name has at most 40 characters; null is the usual of its kind. */
export interface Instrument {
  name: string;
  kind: "micrometer" | "calliper" | "indicator" | "gauge";
  /** One division of its scale or step of its display. */
  graduation: Quantity | null;
  permissible_error: Quantity | null;
  /** The known size that it is set on or compared with; null: none. */
  reference: Quantity | null;
  /** Standard deviation of repeated readings at one place. */
  repeat: Quantity | null;
}

/** What was learned of a lathe by working on it. */
export interface Learned {
  /** What an infeed of a last cut takes off the diameter: an offset, and a share of it. */
  takes: {
    share: Quantity;
    share_deviation: Quantity;
    offset: Quantity;
    offset_deviation: Quantity;
    cuts: Quantity;
  } | null;
  /** Real over planned time; each step at most once. */
  paces: { step: WorkStep; factor: Quantity; jobs: Quantity }[];
}

/** How long a step takes each time: at best, as a rule, at worst. null is the usual. */
export interface StepTime {
  low: Quantity | null;
  likely: Quantity | null;
  high: Quantity | null;
}

/** The turning tool in its figures; depths are on radius. A name has at most 40 characters. */
export interface Edge {
  name: string;
  nose_radius: Quantity | null;
  /** Between the cutting edge and the direction of feed: "90 °" turns a square shoulder. */
  cutting_edge_angle: Quantity | null;
  rake: Quantity | null;
  least_feed: Quantity | null;
  most_feed: Quantity | null;
  least_depth: Quantity | null;
  most_depth: Quantity | null;
  price: Quantity | null;
  edges: Quantity | null;
  regrind_time: Quantity | null;
}

/** The lathe. A name has at most 40 characters. */
export interface Machine {
  name: string;
  rigidity: "light" | "medium" | "heavy";
  speeds: Gears;
  feeds: Gears;
  power: Quantity | null;
  /** The share of the power that reaches the spindle: "80 %". */
  efficiency: Quantity | null;
  torque: Quantity | null;
  swing: Quantity | null;
  chuck_top_speed: Quantity | null;
  /** One division of the cross-slide's dial, as marked, and what it means. */
  graduation: Quantity | null;
  dial_reads: "diameter" | "radius";
  compound_graduation: Quantity | null;
  fine_infeed: Quantity | null;
  head_stiffness: Quantity | null;
  tail_stiffness: Quantity | null;
  post_stiffness: Quantity | null;
  learned: Learned;
}

/** These alone, at most 40 in any order; or every one between two ends. */
export type Gears = Quantity[] | { from: Quantity | null; to: Quantity | null };

/** What the job costs beside its time; a currency has at most 8 characters. */
export interface Rates {
  currency: string;
  per_hour: Quantity | null;
  least: Quantity | null;
  consumables: Quantity | null;
  postage: Quantity | null;
}

/** How the part is set up in the lathe. null is the usual. */
export interface Setup {
  /** null: a chuck on the head, and a live centre where the end gets a countersink. */
  support: "chuck" | "chuck-and-centre" | "between-centres" | "collet" | null;
  jaws: "smooth" | "serrated" | null;
  grip_length: Quantity | null;
  grip_force: Quantity | null;
  /** null: 20 °C. */
  room_temperature: Quantity | null;
  tail_force: Quantity | null;
  near: Plane;
  far: Plane;
  /** At most 12. */
  pins: Pin[];
}

/** Readings of an indicator round the part: at jaw 1, a quarter turn on, half a turn on, three quarters on. */
export interface Plane {
  /** From the shoulder outward; negative on the head. */
  place: Quantity | null;
  readings: [Quantity | null, Quantity | null, Quantity | null, Quantity | null];
}

/** A pass that is pinned by hand; the infeed is on radius. */
export interface Pin {
  after: Quantity;
  infeed: Quantity;
  speed?: Quantity | null;
  feed?: Quantity | null;
}

/** What was done and read at the machine, in the order in which it was entered. */
export interface JobRecord {
  /** Who does the work, at most 40 characters. */
  by?: string;
  /** At most 5000. */
  events: JobEvent[];
}

/** One thing that happened. */
export interface JobEvent {
  /** Seconds since the beginning of 1970, UTC. */
  at: number;
  /** Whether it was wrong, and no longer counts. */
  struck?: boolean;
  what: What;
}

/** What happened. A note has at most 400 characters. */
export type What =
  | { reading: Reading }
  | { cut: { kind: "rough" | "last" | "spring" | "polish"; dialled: Quantity; reads: "diameter" | "radius" } }
  | { change: "new-edge" | "held-again" | "dial-set" | "other-feed" }
  | { note: string }
  | { step: { step: WorkStep; state: "started" | "paused" | "done" | { skipped: string } | "reopened" } }
  | { offered: { mark: string; shows: { rates?: boolean; machine?: boolean }; link?: string } }
  | {
      answered: {
        to: string;
        says: "agree" | "agree-with-change" | "decline" | "ask";
        words?: string;
        by?: string;
      };
    };

/** Something measured, as the instrument showed it. */
export interface Reading {
  of: { diameter: WorkPlace } | "length" | "runout" | "roughness";
  value: Quantity;
  /** The place in the list of instruments, from 0; null: the usual micrometer. */
  instrument?: number | null;
  /** null: that of the room. */
  temperature?: Quantity | null;
  /** Whether the person said that it is right, though it is not what was expected. */
  confirmed?: boolean;
}

/** A place along the shank. */
export type WorkPlace = "near-shoulder" | "middle" | "free-end" | { at: Quantity };

/** The steps of the work at the machine, in working order. */
export type WorkStep =
  | "receive" | "hold" | "dial-in" | "cut-off" | "face" | "centre" | "rough" | "last-cuts" | "polish" | "chamfer"
  | "check" | "clean";

/** What to do next at the lathe. Lengths are mm, shares of the whole, speeds rev/min, feeds mm/rev. */
export interface Advice {
  /** null before the first reading, or after a cut that was not measured yet. */
  size: {
    diameter: Figure;
    uncertainty: number;
    smallest: number;
    largest: number;
    readings: number;
  } | null;
  next: Next;
  takes: Takes;
  /** The newest last. */
  doubts: Doubt[];
  /** null without readings at two places. */
  taper: TaperFound | null;
  verdicts: Verdict[];
}

/** What to do next. */
export type Next =
  | { kind: "measure"; why: "first" | "after-cut" | "too-warm" | "to-settle" }
  | { kind: "answer" }
  | ({ kind: "cut" } & CutNext)
  | { kind: "polish"; off: Figure }
  | { kind: "stop"; why: "in-tolerance" | "not-proven" | "under" | "no-safe-cut" }
  | { kind: "stop"; why: "missing"; of: string };

/** What an infeed takes off the diameter, as believed. */
export interface Takes {
  share: number;
  share_deviation: number;
  offset: number;
  offset_deviation: number;
  covariance: number;
  scatter: number;
  left: number;
  cuts: number;
  from: "guess" | "stiffness" | "learned";
}

/** A reading that contradicts what is believed. */
export interface Doubt {
  /** Its place in the record, from 0. */
  event: number;
  kind:
    | "wrong-unit" | "whole-turn" | "swapped-digits" | "slipped-mark" | "larger" | "unlikely" | "impossible";
  expected: number | null;
  meant: number | null;
}

/** Taper and barrel along the shank. */
export interface TaperFound {
  over_length: Figure;
  length: number;
  uncertainty: number;
  verdict: "parallel" | "tapered" | "not-told";
  /** What the tolerance forgives. */
  forgiven: number | null;
  shift: Figure | null;
  barrel: number | null;
  barrel_uncertainty: number | null;
  /** What the plan's stiffness foretells. */
  barrel_planned: number | null;
  barrel_cause: "work-bends" | "ends-give-way" | "elsewhere" | null;
  places: { at: number; diameter: number; uncertainty: number }[];
}

/** Whether one tolerance is kept. */
export interface Verdict {
  of: { kind: "diameter"; place: WorkPlace } | { kind: "roughness" };
  is: "in" | "over" | "under" | "not-proven" | "too-coarse" | "not-measured";
  measured: Figure | null;
  uncertainty: number;
  lower: number | null;
  upper: number | null;
  guard: number;
  odds_in: number | null;
  more_readings: number | null;
  readings: number;
}

/** One step of the work. */
export interface StepNow {
  step: WorkStep;
  how: "to-do" | "running" | "paused" | "done" | "skipped";
  /** Seconds counted, since when it runs, and whether the device's clock was set back. */
  clock: { counted: number; since: number | null; broken: boolean };
  /** The one figure to set, dial or mark. */
  dial: {
    kind:
      | "as-given" | "cut-mark" | "grip" | "runout" | "facing" | "centre-depth" | "infeed" | "polish-off" | "chamfer"
      | "diameter";
    value: number;
  } | null;
  /** Further figures, the most needed first. */
  figures: {
    kind:
      | "head-diameter" | "shank-length" | "from-shoulder" | "method" | "kerf" | "offcut-length" | "support"
      | "held-diameter" | "overhang"
      | "finished-length" | "depth-from" | "centre-drill" | "mouth" | "off-diameter" | "diameter-after" | "dial-reads"
      | "passes-left" | "compound-angle" | "compound-travel" | "lower-limit" | "upper-limit" | "wanted-length"
      | "roughness";
    value: number | string | null;
  }[];
  spindle_speed: number | null;
  feed: number | null;
  /** Low, likely and high. */
  planned: [number, number, number] | null;
  planned_mean: number | null;
  warnings: (
    | "chuck-key" | "grip-weak" | "loses-grip" | "long-overhang" | "chuck-speed" | "centre-nips-up" | "disc" | "grit"
    | "hot-offcut" | "offcut-falls" | "parting-jams" | "saw-on-hard" | "chips-long" | "chips-hard" | "dust-of-cast-iron"
    | "titanium-fire" | "knocks" | "grinding" | "hot-work" | "stop-to-measure" | "centre-drill-breaks"
    | "centre-on-hard" | "fingers-at-spindle" | "sharp-edges" | "unknown-past" | "no-air-line"
  )[];
}

/** The next cut. */
export interface CutNext {
  /** Which pass of the plan; null beyond the planned ones. */
  pass: number | null;
  pass_kind: "rough" | "last" | "polish";
  spring: boolean;
  divisions: number;
  graduation: number;
  reads: "diameter" | "radius";
  dialled: number;
  off_diameter: number;
  diameter_after: Figure;
  odds_under: number;
  cuts_left: number;
  measure: { when: "after-this" } | { when: "after"; cuts: number };
  spindle_speed: number | null;
  feed: number | null;
}

/**
 * All that follows from a job; null is what could not be computed, and a finding says why.
 * Lengths are mm, volumes mm³, masses g, densities kg/m³, times s, speeds m/min, feeds mm/rev, spindle speeds
 * rev/min, angles rad.
 */
export interface Plan {
  cut_off: CutOff | null;
  receiver: ReceiverPlan | null;
  grip: Figure | null;
  stock_off: StockOff | null;
  centre: Centre | null;
  holding: HoldingPlan | null;
  dial: DialPlan | null;
  time: PlannedTime | null;
  /** null without a rate. */
  cost: Cost | null;
  finish: FinishPlan | null;
  tools: ToolChoice | null;
  finish: FinishPlan | null;
  limits: { upper: number; lower: number; aim: number } | null;
  clean_up: CleanUp | null;
  walls: Wall[];
  metal: MetalBudget | null;
  kept: Kept | null;
  bears: Bears | null;
  masses: Masses | null;
  /** Worst first; never empty. */
  findings: Finding[];
}

/** What the receiver asks, and how the shank fits into it. */
export interface ReceiverPlan {
  asked: {
    diameters: Range | null;
    limits: Range | null;
    class: ShaftClass | null;
    least_grip: number | null;
    most_grip: number | null;
    depth: number | null;
    shank_length: number | null;
    largest_fillet: number | null;
    least_shoulder: number | null;
    /** Places from the shank's end. */
    flat: {
      length: number | null;
      middle: number | null;
      second: number | null;
      height: number | null;
      runs_out: number | null;
    } | null;
    source: Source;
  };
  hole: Range | null;
  /** How much larger the shank is than the hole; negative is clearance. */
  fit: Range | null;
  sleeve: {
    wall: number;
    least_wall: number;
    pressure: Figure;
    sleeve_stress: Figure;
    shaft_stress: Figure;
    holds: Figure;
    warmer_by: Figure;
  } | null;
}

/** What is kept of strength and stiffness, as shares of what was. */
export interface Kept {
  before: Weakest;
  after: Weakest;
  bending: Figure;
  torsion: Figure;
  stiffness: Figure;
  twist: Figure;
}

/** The least that any section of the shank has. */
export interface Weakest {
  at: number;
  diameter: number;
  bases: (
    | "round" | "eccentric-hole" | "thread-root" | "flat" | "keyway" | "cross-hole" | "slot" | "torsion-estimate"
  )[];
  bending_modulus: number;
  torsion_modulus: number;
  second_moment: number;
  torsion_constant: number;
}

/** What the finished shank bears. */
export interface Bears {
  shoulder: { bending: Figure; torsion: Figure; tension: Figure; checked: boolean } | null;
  surface: { kind: "through" | "case" | "core" | "partly"; hardness: number | null };
  ultimate: { low: number; typical: number; high: number };
  duty: {
    torque: number;
    moment: number;
    at: number;
    against_yield: Figure | null;
    against_fatigue: Figure | null;
  } | null;
}

/** Weights of the whole part; centres of gravity from the shoulder towards the free end. */
export interface Masses {
  before: Figure;
  chips: Figure;
  after: Figure;
  balance_before: Figure;
  balance_after: Figure;
}

/** One thing that the part could become; kept are the shares of strength in bending, in torsion, and of stiffness. */
export interface Becomes {
  shank: string;
  wanted: Wanted;
  full_length: boolean;
  grip: number;
  cut_off: number;
  turned: number;
  bending_modulus: number;
  kept: [number, number, number];
}

export interface Range {
  low: number;
  high: number;
}

/** A value with its working. */
export interface Figure {
  value: number;
  range: { low: number; high: number } | null;
  working: Working;
}

export interface Working {
  symbol: string;
  formula: string;
  parts: string[];
  inputs: { symbol: string; meaning: string | { field: string }; value: Value }[];
  source: Source;
}

export interface Value {
  kind:
    | "length" | "angle" | "time" | "speed" | "feed" | "rotation" | "mass" | "volume" | "density" | "area"
    | "second-moment" | "force" | "torque" | "power" | "stress" | "temperature-step" | "hardness" | "taper" | "ratio"
    | "share" | "count" | "money" | "stiffness" | "expansion" | "fine";
  value: number;
}

export type Source =
  | { kind: "geometry" }
  | { kind: "common-practice" }
  | { kind: "published"; title: string; confirmed: "two-sources" | "one-source" | "memory" };

export interface CutOff {
  kind: "cut-and-face" | "face-only" | "as-it-is";
  from_free_end: Figure;
  from_shoulder: Figure;
  kerf: number;
  facing: number;
  offcut_length: Figure;
  offcut_mass: Figure;
  shank_after_cut: Figure;
  shank_finished: Figure;
}

export interface CleanUp {
  at: number;
  because: Because;
  largest_diameter: Figure;
  longest: number;
  /** The largest diameter that cleans up over a length, from length to length in straight lines. */
  most: { length: number; diameter: number }[];
}

/** What is in the way, by its place in the job's list. */
export interface Because {
  kind: "section" | "feature";
  index: number;
}

export interface StockOff {
  most: Figure;
  sections: { section: number; at_start: number; at_end: number }[];
  rough_each: Figure | null;
  last_each: number;
  polishing: number;
  passes: Pass[];
  spindle_speed: Figure | null;
  cutting_speed: number;
  /** The last one in part. */
  edges_used: number;
  tool_changes: number;
}

export interface Pass {
  kind: "rough" | "last" | "polish";
  /** On radius. */
  infeed: number;
  off_diameter: number;
  diameter_after: number;
  metal: number;
  travel: number;
  /** Where the last metal is that it meets, from the shoulder. */
  ends_at: number;
  cutting_speed: number;
  spindle_speed: number;
  feed: number;
  /** As a rule; setting, returning and measuring counted. */
  time: number;
  feeding: number;
  /** null for polishing. */
  cut: PassCut | null;
}

/** What a cut does to tool, machine and work. */
export interface PassCut {
  /** Tangential, down onto the tool. */
  force: Spread;
  along: number;
  across: number;
  power: number;
  /** How much of each limit is used; 1 is all. */
  loads: { limit: Limit; share: number }[];
  held_by: { depth: Limit | null; feed: Limit | null; speed: Limit | null };
  /** Ra; null where the feed leaves a thread. */
  roughness: Spread | null;
  edge_used: number;
  chip: "short-by-nature" | "breaks" | "may-be-long" | "stringy";
  interrupted: boolean;
  in_core: boolean;
  /** Its place among the pinned passes, from 0; null where it was planned. */
  pinned: number | null;
  new_edge: boolean;
}

/** Which kinds of tool turn the metal at the surface, and why to grind instead, the weightiest first. */
export interface ToolChoice {
  tools: {
    tool: Shop["tool"];
    verdict: { kind: "yes" } | { kind: "with-care"; why: Care } | { kind: "no"; why: Unfit };
    speeds: Range | null;
  }[];
  grind: (
    | { kind: "no-tool-cuts" }
    | { kind: "harder-than-turned"; most: number }
    | { kind: "little-stock"; least: number }
    | { kind: "fine-tolerance"; finest: number }
  )[];
}

/** How shoulder, end and surface are finished. */
export interface FinishPlan {
  fillet: {
    fillet: number;
    nose_radius: number;
    graduations: { axial: number; radial: number };
    way:
      | { kind: "own-nose" | "form-tool" }
      | { kind: "steps"; steps: { from_face: number; infeed_left: number }[]; highest_cusp: number }
      | { kind: "nose-too-large"; largest: number };
  } | null;
  chamfer: { width: number; angle: number; travel: number } | null;
  polish: {
    stock: number;
    least: Spread;
    ridge: Figure | null;
    verdict: "enough" | "marks-may-stay" | "marks-stay";
  } | null;
  fine_infeed: { graduation: number; infeed: number; angle: Figure | null } | null;
}

export type Care =
  | "cobalt-grade" | "no-interrupted-cut" | "light-cuts" | "nearly-too-soft" | "emergency" | "dust-and-slow"
  | "hardness-uncertain";

export type Unfit = "too-hard" | "too-soft" | "reacts" | "no-figure";

/** What limits a cut. */
export type Limit =
  | "depth" | "feed" | "finish" | "cutting-speed" | "tool-life" | "spindle-speed" | "power" | "torque" | "grip"
  | "deflection";

export interface Spread {
  low: number;
  typical: number;
  high: number;
}

export interface Estimate {
  low: number;
  likely: number;
  high: number;
}

/** How shoulder, end and surface are finished. */
export interface FinishPlan {
  fillet: {
    fillet: number;
    nose_radius: number;
    graduations: { axial: number; radial: number };
    way:
      | { kind: "own-nose" }
      | { kind: "steps"; steps: { from_face: number; infeed_left: number }[]; highest_cusp: number }
      | { kind: "nose-too-large"; largest: number }
      | { kind: "form-tool" };
  } | null;
  chamfer: { width: number; angle: number; travel: number } | null;
  polish: {
    stock: number;
    least: Spread;
    ridge: Figure | null;
    verdict: "enough" | "marks-may-stay" | "marks-stay";
  } | null;
  fine_infeed: { graduation: number; infeed: number; angle: Figure | null } | null;
}

/** How the part is held, and what that does. Places are from the shoulder. */
export interface HoldingPlan {
  support: "chuck" | "chuck-and-centre" | "between-centres" | "collet";
  chuck_face: number;
  grip_length: number;
  gripped_diameter: number;
  overhang: number;
  slender: {
    ratio: number;
    caution: "none" | "careful" | "too-slender";
    remedy: "nothing" | "use-centre" | "use-steady";
  } | null;
  form: {
    points: FormPoint[];
    greatest: FormPoint;
    least: FormPoint;
    taper: number;
    shape: "even" | "bell-mouth" | "larger-at-shoulder" | "barrel" | "waist";
  } | null;
  /** In the last cut. */
  across: number;
  /** How much the diameter may vary. */
  allowed: number;
  /** How much larger the diameter comes out where work and tool part most. */
  deflection: Figure | null;
  slender_ratio: Figure | null;
  copied: number | null;
  grip: {
    held: Estimate;
    needed: number;
    ratio: { ratio: number; verdict: "holds" | "safety-eaten" | "slips" } | null;
  } | null;
  tail: {
    across: number;
    thrust: Estimate;
    pressure: { radial: number; axial: number; certain: number | null; at_most: number | null } | null;
  } | null;
}

export interface FormPoint {
  at: number;
  parting: number;
  size_error: number;
}

/** What the indicator's readings say. Directions are from jaw 1, the way in which the quarters were read. */
export interface DialPlan {
  near: Dialled;
  far: Dialled | null;
  dial_in: {
    at_chuck: Shift;
    at_free_end: Shift;
    runout_between: number;
    remains_at_free_end: number;
  } | null;
  packing: { line: Packing; flat: Packing } | null;
}

export interface Dialled {
  offset: { x: number; y: number };
  known: "both" | "along-one-line";
  span: number;
  left_over: number;
  error_share: number;
}

/** How far to move the work at a place, and the jaw towards which that is most nearly. */
export interface Shift {
  z: number;
  shift: { x: number; y: number };
  nearest: { jaw: number; beside: number };
}

export interface Packing {
  thickness: [number, number, number];
  beside_middle: number;
  rule_of_thumb: { jaw: number; thickness: number; leaves: number | null };
}

export interface Centre {
  mouth: number;
  on: { kind: "solid"; drill: string; pilot: number } | { kind: "hole"; bore: number };
  cone_depth: Figure;
  feed_depth: Figure;
  point_reach: number;
}

/** The whole time with its steps and what the lathe feeds; shares are of the mean. */
export interface PlannedTime {
  steps: { step: Step; count: number; each: Estimate; share: number }[];
  feeding: {
    feeding: "parting" | "facing" | "centring" | "turning";
    count: number;
    together: Estimate;
    share: number;
  }[];
  spread: {
    low: number;
    likely: number;
    high: number;
    mean: number;
    feeding_mean: number;
    handling_mean: number;
    deviation: number;
    skewness: number;
  };
  total: Figure;
  /** Steps of the work that were scaled by what earlier jobs on the lathe taught. */
  learned: { step: WorkStep; factor: number; jobs: number }[];
}

export type Step =
  | "receive-and-check" | "hold" | "dial-in" | "cut-off" | "face" | "centre" | "set-depth" | "return" | "measure"
  | "tool-change" | "regrind" | "polish" | "chamfer" | "clean" | "final-check" | "pack";

/** In the one currency of the job; the parts make up the likely cost. */
export interface Cost {
  low: number;
  likely: number;
  high: number;
  parts: ["labour" | "edges" | "discs" | "consumables" | "to-minimum" | "postage", number][];
  minimum_applied: boolean;
  working: Working;
}

export interface Wall {
  bore: number;
  least: Figure;
  at: number;
  advised: number;
  bore_diameter: number;
  offset: number;
}

export interface MetalBudget {
  received: number;
  offcut: number;
  kerf: number;
  facing: number;
  turned: number;
  centred: number;
  left: number;
}

/** How bad it is, the field of the job to mend first, and the lengths that belong to the code. */
export type Finding = { level: "clear" | "caution" | "stop"; field: string } & (
  | {
      code:
        | "all-clear" | "out-of-bounds" | "title-too-long" | "no-section" | "too-many"
        | "taper-comes-to-a-point" | "taper-too-steep" | "feature-too-deep" | "feature-cuts-nothing" | "step-not-wider"
        | "no-such-limits" | "thread-cut-away" | "no-straight-shank" | "no-shoulder"
        | "sharp-shoulder" | "sharp-end" | "length-already" | "nothing-to-turn" | "too-many-passes"
        | "tool-cannot-cut" | "cobalt-grade-needed" | "tool-at-its-limit" | "saw-cannot-cut" | "hard-end";
    }
  | {
      code:
        | "limits-crossed" | "thread-below-hole" | "ream-below-hole" | "holes-meet" | "shoulder-stands-off"
        | "faced-back";
      by: number;
    }
  | { code: "receiver-takes-others"; smallest: number; largest: number }
  | { code: "limits-asked"; lower: number; upper: number }
  | { code: "may-not-go-in"; most: number }
  | { code: "fillet-meets-edge"; largest: number }
  | { code: "shoulder-too-low"; height: number; least: number }
  | { code: "flat-misses-shank"; least: number }
  | { code: "shorter-than-standard"; standard: number }
  | { code: "sleeve-too-thin"; wall: number; least: number }
  | { code: "sleeve-yields" | "case-depth-unknown" | "duty-incomplete" }
  | { code: "sleeve-may-slip"; held: number }
  | { code: "case-turned-away"; left: number | null }
  | { code: "duty-too-much" | "safety-low"; safety: number }
  | { code: "gap-before" | "sections-overlap"; by: number; mend: number }
  | { code: "lengths-disagree"; whole: number; sum: number }
  | { code: "feature-off-shank"; longest: number }
  | { code: "cross-hole-stays"; at: number; longest: number }
  | { code: "bore-too-wide"; at: number; outside: number }
  | { code: "shank-too-short"; short_by: number; longest: number }
  | { code: "not-cleaned-up"; at: number; short_by: number; largest: number; longest: number; because: Because }
  | { code: "cleans-up-low"; at: number; largest: number }
  | { code: "breaks-out"; at: number; smallest: number }
  | { code: "thin-wall"; wall: number; advised: number; at: number }
  | { code: "thread-left"; length: number }
  | { code: "grip-too-short"; grip: number; least: number }
  | { code: "countersink-too-wide"; end: number }
  | { code: "countersink-in-hole"; bore: number }
  | { code: "countersink-on-thread"; major: number }
  | { code: "no-centre-drill" | "fillet-too-large" | "fillet-in-part"; largest: number }
  | { code: "point-touches-bottom"; least_depth: number }
  | { code: "infeed-too-fine"; infeed: number; least: number }
  | { code: "last-cuts-reduced" | "last-cuts-lighter"; each: number }
  | {
      code:
        | "no-gears" | "gears-crossed" | "name-too-long" | "no-row-of-passes" | "no-rate" | "times-crossed"
        | "centre-without-hole" | "dial-not-possible" | "dial-incomplete" | "grind-instead";
    }
  | { code: "tool-with-care"; care: Care }
  | { code: "soft-core-under-tool"; pass: number }
  | { code: "too-large-to-swing"; largest: number }
  | { code: "no-pass" | "pin-breaks"; limit: Limit; share: number }
  | { code: "pins-overlap"; other: number }
  | { code: "pin-outside"; start: number; end: number }
  | { code: "gives-way"; by: number; allowed: number }
  | { code: "roughness-not-reached"; expected: number }
  | { code: "speed-above-window"; highest: number }
  | { code: "may-chatter"; ratio: number; easy: number }
  | { code: "short-grip"; least: number }
);
