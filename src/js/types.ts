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

/** The part as received. Sections and features on the shank, from the shoulder outward; null is not known. */
export interface Part {
  material: Material;
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
  receiver: ReceiverPlan | null;
  grip: Figure | null;
  stock_off: StockOff | null;
  centre: Centre | null;
  time: CycleTime | null;
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
    | "share" | "count";
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
  | { code: "last-cuts-reduced"; each: number }
);
