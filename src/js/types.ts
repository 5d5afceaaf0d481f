/** What every function throws: an Error with a code for programs and, for a job, the path of the field. */
export interface SkimwrightError extends Error {
  /** "job", "length", "unit", or what is wrong with a link. */
  code:
    | "job" | "length" | "unit" | "internal"
    | "empty" | "too-long" | "not-a-link" | "newer" | "damaged" | "beyond-limits" | "too-large";
  /** Such as "part.sections[0].length"; empty when no one field is meant. */
  path: string;
}

export type LengthUnit = "mm" | "in";

/** A number as typed, with its unit: "25.4 mm", "1 3/8 in", "120 m/min", "0.1 mm/rev", "2000 rpm", "13 s". */
export type Quantity = string;

/** A job of which any field may be left out; it then has the value of the default job. null is an empty field. */
export interface JobInput {
  version?: 1;
  title?: string;
  part?: Partial<Part>;
  wanted?: Partial<Wanted>;
  shop?: Partial<Shop>;
}

/** One part, what is wanted of it, and the shop it is done in. */
export interface Job {
  version: 1;
  title: string;
  part: Part;
  wanted: Wanted;
  shop: Shop;
}

/** The part as received. Sections from the shoulder outward; depths of holes from the free end. */
export interface Part {
  material: Material;
  head_diameter: Quantity;
  head_length: Quantity;
  runout: Quantity;
  sections: Section[];
  bores: Bore[];
}

export type Material =
  | "low-carbon-steel" | "medium-carbon-steel" | "alloy-steel-tempered" | "alloy-steel-hard"
  | "tool-steel-annealed" | "hardened-steel" | "case-hardened-steel" | "high-speed-steel-hard"
  | "stainless-martensitic" | "stainless-austenitic" | "grey-iron" | "ductile-iron"
  | "aluminium-alloy" | "brass" | "bronze" | "titanium-alloy";

export type Section =
  | { kind: "cylinder"; diameter: Quantity; length: Quantity }
  | { kind: "taper"; shoulder_diameter: Quantity; end_diameter: Quantity; length: Quantity }
  | { kind: "standard-taper"; taper: string; past_gauge: Quantity; length?: Quantity | null };

export type Bore =
  | { kind: "drilled"; diameter: Quantity; depth: Quantity; bottom: "drill-point" | "flat" }
  | { kind: "tapped"; thread: string; thread_depth: Quantity; drill_depth: Quantity }
  | { kind: "centre-hole"; centre_drill: string };

/** What is wanted of the shank. */
export interface Wanted {
  diameter: Quantity;
  tolerance: Tolerance;
  length: Quantity;
  shoulder_radius: Quantity;
  end_chamfer: Quantity;
  countersink: Quantity | null;
  receiver_depth: Quantity | null;
  least_grip: Quantity | null;
}

export type Tolerance =
  | { class: "h5" | "h6" | "h7" | "h8" | "h9" | "g6" | "k6" | "js5" | "j5" | "j6" | "js6" | "k5" | "m5" | "m6"
      | "n6" | "p6" | "r6" | "s6" | "f7" | "g5" | "h11" }
  | { upper: Quantity; lower: Quantity };

/** What the job is done with. null is the usual value for the material and the tool. */
export interface Shop {
  tool: "high-speed-steel" | "brazed-carbide" | "indexable-carbide" | "cubic-boron-nitride";
  cut_off_method: "hand-disc" | "chop-wheel" | "saw" | "parting-tool";
  kerf: Quantity | null;
  facing_stock: Quantity;
  centre_order: "after-facing" | "before-facing";
  rough_infeed: Quantity | null;
  last_cut: Quantity;
  polishing_stock: Quantity;
  cutting_speed: Quantity | null;
  rough_feed: Quantity | null;
  finish_feed: Quantity | null;
  top_speed: Quantity;
  approach: Quantity;
  set_time: Quantity;
  return_time: Quantity;
  measure_time: Quantity;
  polish_time: Quantity;
}

/**
 * All that follows from a job; null is what could not be computed, and a finding says why.
 * Lengths are mm, volumes mm³, masses g, densities kg/m³, times s, speeds m/min, feeds mm/rev, spindle speeds
 * rev/min, angles rad.
 */
export interface Plan {
  cut_off: CutOff | null;
  grip: Figure | null;
  stock_off: StockOff | null;
  centre: Centre | null;
  time: CycleTime | null;
  limits: { upper: number; lower: number; aim: number } | null;
  clean_up: { at: number; largest_diameter: Figure; longest: number } | null;
  walls: Wall[];
  metal: MetalBudget | null;
  /** Worst first; never empty. */
  findings: Finding[];
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
    | "count";
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

export interface StockOff {
  most: Figure;
  sections: { section: number; at_start: number; at_end: number }[];
  rough_each: Figure | null;
  last_each: number;
  polishing: number;
  passes: Pass[];
  spindle_speed: Figure | null;
  cutting_speed: number;
}

export interface Pass {
  kind: "rough" | "last" | "polish";
  /** On radius. */
  infeed: number;
  off_diameter: number;
  diameter_after: number;
  metal: number;
  travel: number;
  cutting_speed: number;
  spindle_speed: number;
  feed: number;
  time: { low: number; likely: number; high: number };
}

export interface Centre {
  mouth: number;
  on: { kind: "solid"; drill: string; pilot: number } | { kind: "hole"; bore: number };
  cone_depth: Figure;
  feed_depth: Figure;
  point_reach: number;
}

export interface CycleTime {
  total: Figure;
  cutting: number;
  handling: number;
  polishing: number;
}

export interface Wall {
  bore: number;
  least: Figure;
  at: number;
  advised: number;
  bore_diameter: number;
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
        | "taper-comes-to-a-point" | "no-such-limits" | "thread-cut-away" | "no-straight-shank" | "no-shoulder"
        | "sharp-shoulder" | "sharp-end" | "length-already" | "nothing-to-turn" | "too-many-passes"
        | "tool-cannot-cut" | "cobalt-grade-needed" | "tool-at-its-limit" | "saw-cannot-cut" | "hard-end";
    }
  | { code: "limits-crossed" | "thread-below-hole" | "shoulder-stands-off" | "faced-back"; by: number }
  | { code: "shank-too-short"; short_by: number; longest: number }
  | { code: "not-cleaned-up"; at: number; short_by: number; largest: number; longest: number }
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
  | { code: "last-cuts-reduced"; each: number }
);
