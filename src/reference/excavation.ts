/** 29 CFR 1926 subpart P, in feet as the rule states them. */
export const EXCAVATION = {
  /** 1926.652(a)(1)(ii): a protective system from here on, and below it unless a competent person sees no sign of a cave-in. */
  protectiveFt: 5,
  /** 1926.651(c)(2): a ladder, steps or ramp from here on, no more than 25 ft of travel to one. */
  exitFt: 4,
  exitTravelFt: 25,
  /** 1926.651(g)(1)(i): test the air deeper than this where a hazard may exist. */
  airFt: 4,
  /** 1926.651(j)(2): spoil and equipment at least this far from the edge. */
  spoilFt: 2,
  /** 1926.652(b) and (c): deeper than this, a registered engineer designs the protective system. */
  engineerFt: 20
} as const
