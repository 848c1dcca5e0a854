/** Cases of load chains, by themselves and in hoists: least link 6.4 mm, 236 mm over the gauged links, as a maker might give them. */
import { onSight, PRACTICE, type LimitCase, type SightCase } from "../helpers";

export const loadChainCases = (kind: string): readonly LimitCase[] => [
  {
    criterion: `${kind}.link-thickness.practice`,
    source: PRACTICE,
    inside: [{ sectionNow: 7 }, "KEEP"],
    edge: [{ sectionNow: 6.4 }, "KEEP"],
    past: [{ sectionNow: 6.39 }, "REMOVE"],
  },
  {
    criterion: `${kind}.stretch-over-gauged-links.practice`,
    source: PRACTICE,
    inside: [{ gaugedNow: 232 }, "KEEP"],
    edge: [{ gaugedNow: 236 }, "KEEP"],
    past: [{ gaugedNow: 236.1 }, "REMOVE"],
  },
];
export const loadChainSights = (kind: string): readonly SightCase[] => [
  ...onSight(kind, "cracks", "cracks", { practice: PRACTICE }),
  ...onSight(kind, "twisted or bent links", "deformed", { practice: PRACTICE }),
  ...onSight(kind, "corrosion", "corrosion", { practice: PRACTICE }),
  ...onSight(kind, "heat damage", "heat", { practice: PRACTICE }),
  ...onSight(kind, "field weld or change", "fieldChange", { practice: PRACTICE }),
];
