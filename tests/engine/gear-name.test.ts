import { describe, expect, it } from "vitest";
import { GEAR } from "../../src/engine/gear/index";
import { matchKind, matchPart } from "../../src/engine/names/gear-name";
import { type Cells } from "../../src/engine/log/cells";
import { field } from "../../src/engine/columns";
import { matchVariant } from "../../src/engine/names/variant-name";
import { readVariant } from "../../src/engine/item/variant";
import { CONSTRUCTIONS } from "../../src/engine/gear/wire-rope-sling";
import { kindNamed } from "./helpers";

const kindOf = (text: string): string => {
  const match = matchKind(text);
  return match.ok ? match.kind.id : "?";
};

describe("what people call a piece of gear", () => {
  const names: [kind: string, texts: string[]][] = [
    [
      "hook",
      [
        "hook",
        "Hooks",
        "HOOK",
        "eye hook",
        "Hook, eye",
        "clevis hook",
        "swivel hook",
        "self-locking hook",
        "crane hook",
        "3 t sling hook",
        "hook (grab)",
        "hoist hook 5t",
      ],
    ],
    [
      "shackle",
      [
        "shackle",
        "shackles",
        "anchor shackle",
        "Shackle, anchor",
        "bow shackle",
        "screw-pin shackle",
        "screw pin anchor shackle",
        "Dee shackle",
        "D-shackle",
        "bolt type shackle",
        "safety shackle",
        "chain shackle",
      ],
    ],
    ["link", ["link", "ring", "Rings", "master link", "Master-link", "pear link", "oblong link", "pear shaped link", "link, master"]],
    ["swivel", ["swivel", "Swivels", "eye and eye swivel", "jaw & eye swivel", "ball bearing swivel", "swivel, jaw"]],
    ["block", ["block", "snatch block", "Blocks", "rigging block", "block, snatch", "pulley", "double sheave block"]],
    [
      "chain sling",
      [
        "chain sling",
        "Chain slings",
        "alloy chain sling",
        "sling, chain",
        "two-leg chain sling",
        "chain",
        "alloy steel chain sling, 2 leg",
      ],
    ],
    ["wire rope sling", ["wire rope sling", "Wire-rope slings", "sling, wire rope", "wire sling", "cable sling", "wire rope strop"]],
    ["web sling", ["web sling", "webbing sling", "Synthetic web sling", "flat sling", "nylon sling", "polyester sling"]],
    ["eyebolt", ["eyebolt", "Eye bolts", "shoulder eyebolt", "machinery eye-bolt"]],
    ["eye nut", ["eye nut", "Eye-nuts", "lifting eye nut"]],
    ["hoist ring", ["hoist ring", "swivel hoist ring", "Hoist rings, swivel"]],
    [
      "turnbuckle",
      ["turnbuckle", "Turnbuckles", "turnbuckle, jaw & eye", "hook and eye turnbuckle", "turnbuckle hook-hook", "rigging screw"],
    ],
    ["wedge socket", ["wedge socket", "Wedge sockets", "wedge rope socket"]],
    ["clips", ["clips", "clip", "wire rope clip", "Wire rope clips", "U-bolt clips", "bulldog grips", "clips, wire rope"]],
    ["sheave", ["sheave", "Sheaves", "crane sheave", "rope sheave 400 mm"]],
    ["load block", ["load block", "hook block", "Hook-block 25 t", "crane hook block", "block, load"]],
    ["headache ball", ["headache ball", "Headache balls", "ball hook", "overhaul ball"]],
    ["grommet", ["grommet", "endless wire rope sling", "cable-laid grommet"]],
    ["lifting point", ["lifting point", "weld-on lifting point", "bolt on lifting point"]],
    ["coupling", ["coupling link", "connecting link", "shortening clutch"]],
    ["chain hoist", ["chain hoist", "Chain hoists", "hand chain hoist", "chain fall", "chain block", "chain hoist with hook"]],
    ["lever hoist", ["lever hoist", "Lever chain hoist", "lever block"]],
    ["load chain", ["load chain", "hoist load chain"]],
    ["beam clamp", ["beam clamp", "beam trolley", "girder trolley"]],
    ["vacuum lifter", ["vacuum lifter", "vacuum lifting device"]],
    ["lifting magnet", ["lifting magnet", "permanent lifting magnet"]],
    ["running rope", ["running rope", "hoist rope", "boom hoist rope", "winch rope"]],
    ["rotation resistant rope", ["rotation resistant rope", "Rotation-resistant hoist rope", "non-rotating rope"]],
    ["standing rope", ["standing rope", "pendant", "Pendants", "guy rope"]],
    ["mesh sling", ["mesh sling", "metal mesh sling", "wire mesh sling", "chain mesh sling"]],
    ["fibre rope sling", ["fibre rope sling", "fiber rope sling", "manila sling", "nylon rope sling"]],
    ["lifting beam", ["lifting beam", "spreader bar", "Spreader beams", "spreader"]],
    ["plate clamp", ["plate clamp", "vertical plate clamp", "lifting clamp"]],
    ["block", ["lead block", "fibre rope block", "wire rope block", "sheave block"]],
    ["roundsling", ["roundsling", "round sling", "Round slings", "endless round sling", "polyester roundsling", "polyester round sling"]],
  ];
  for (const [kind, texts] of names)
    for (const text of texts)
      it(`"${text}" is a ${kind}`, () => {
        expect(kindOf(text)).toBe(kind);
      });

  it("every name of every kind is that kind, in any order, in the plural, in capitals", () => {
    for (const kind of GEAR)
      for (const name of [kind.id, ...kind.names]) {
        for (const text of [
          name,
          name.toUpperCase(),
          name.endsWith("s") ? name : `${name}s`,
          name.split(" ").reverse().join(" "),
          name.replaceAll(" ", "-"),
          ` ${name} `,
        ])
          expect(kindOf(text), text).toBe(kind.id);
      }
  });
});

describe("gear that is not in the catalogue", () => {
  it("is named, with the nearest kinds", () => {
    for (const text of ["rope grab", "load binder"]) {
      const match = matchKind(text);
      expect(match.ok, text).toBe(false);
      if (match.ok) continue;
      expect(match.why).toContain(`"${text}"`);
      expect(match.why).toContain("nearest");
      expect(match.why).toMatch(/nearest: \w/);
    }
  });
  it("is named, with all kinds where none is near", () => {
    expect(matchKind("anvil")).toEqual({
      ok: false,
      why: `"anvil" is not a gear kind in this catalogue, which has ${GEAR.map((kind) => kind.id).join(", ")}`,
    });
  });
  it("the nearest share a word with it", () => {
    const match = matchKind("sling");
    expect(match).toMatchObject({ ok: false, why: expect.stringMatching(/chain sling, wire rope sling, web sling/) });
    expect(!match.ok && match.why.includes("block")).toBe(false);
  });
  it("that could be two kinds is refused with both", () => {
    const match = matchKind("hook and shackle");
    expect(match).toMatchObject({ ok: false, why: expect.stringMatching(/hook or shackle/) });
  });
  it("is a chain that is no alloy chain sling, and the reason says which chains are in it", () => {
    for (const text of [
      "proof coil chain",
      "proof-coil chain sling",
      "wrought iron chain sling",
      "grade 30 chain",
      "Grade-43 chain",
      "G43 chain",
      "gr. 70 transport chain",
      "43 grade chain",
      "grade 120 chain sling",
      "load binder chain",
      "stainless chain sling",
      "carbon steel chain sling",
      "high test chain",
      "non-alloy chain sling",
      "anchor chain",
    ])
      expect(matchKind(text), text).toMatchObject({
        ok: false,
        why: expect.stringContaining("only alloy chain of grade 80 or 100 is in this catalogue"),
      });
    for (const text of [
      "chain sling grade 80",
      "3/8 grade 100 chain sling",
      "G80 chain",
      "Gr. 10 chain sling",
      "alloy chain sling, grade 8",
      "10 mm grade 80 chain",
      "grade 80 alloy chain, 13 mm",
      "chain sling, proof loaded",
    ])
      expect(kindOf(text), text).toBe("chain sling");
  });
  it("that only shares a word with a kind is not that kind", () => {
    for (const text of ["pendant control", "Control pendant", "push-button pendant", "ring spanner", "hook spanner", "O-ring", "hose clip"])
      expect(matchKind(text), text).toMatchObject({ ok: false, why: expect.stringContaining("is not a gear kind in this catalogue") });
  });
  it("is no hoist where its hook is meant", () => {
    for (const text of ["chain hoist hook", "lever hoist bottom hook"]) expect(kindOf(text), text).toBe("hook");
  });
  it("a lifting ring can be a hoist ring or a ring", () => {
    expect(matchKind("lifting ring")).toMatchObject({
      ok: false,
      why: expect.stringMatching(/could be (hoist ring or link|link or hoist ring)/),
    });
    expect(kindOf("swivel lifting ring")).toBe("hoist ring");
  });
  it("that is said not to be a kind is none", () => {
    for (const text of ["not a hook", "Not a shackle", "no hook", "hook, not", "chain sling, not alloy", "isn't a hook"])
      expect(kindOf(text), text).toBe("?");
    for (const text of ["hook no 4", "Hook No. 12", "no. 5 shackle"]) expect(kindOf(text), text).not.toBe("?");
  });
  it("missing is missing", () => {
    for (const text of ["", "  ", "-", "?"]) expect(matchKind(text)).toMatchObject({ ok: false, why: expect.stringContaining("missing") });
  });
});

describe("the head of a name decides", () => {
  const kinds: [kind: string, texts: string[]][] = [
    [
      "hook",
      [
        "Swivel eye hook",
        "swivel eye grab hook",
        "eye swivel hook",
        "swivel jaw hook",
        "Hook, eye, swivel",
        "hook, swivel eye",
        "Swivel hook, eye",
        "5 t, swivel eye hook",
        "hook with latch",
        "hook with swivel",
        "hook without latch",
      ],
    ],
    ["block", ["Swivel eye snatch block", "swivel snatch block", "swivel jaw block", "snatch block c/w becket"]],
    ["load block", ["swivel hook block", "hook block with swivel", "crane hook block, 2 sheaves"]],
    [
      "chain sling",
      [
        "2-leg chain sling c/w self-locking hooks",
        "4 leg chain sling with hooks",
        "Chain sling w/ grab hooks",
        "chain sling w/hooks",
        "Chain sling complete with master link",
        "chain sling fitted with hooks and master link",
        "chain sling incl. hooks",
        "chain sling (with hooks)",
        "chain sling and hooks",
        "chain sling + master link",
        "chain sling, with shackles",
        "chain with hooks",
        "chain sling w/o hooks",
      ],
    ],
    ["wire rope sling", ["wire rope sling with hook", "wire rope sling c/w ferrule", "wire rope sling with swaged socket"]],
    ["web sling", ["web sling with hooks", "web sling & hooks", "web sling with D ring"]],
    ["roundsling", ["roundsling incl shackle"]],
    ["running rope", ["hoist rope with wedge socket", "crane rope with hook"]],
    ["standing rope", ["pendant with open socket"]],
    ["lifting beam", ["spreader beam with hooks", "lifting beam c/w shackles"]],
    ["turnbuckle", ["turnbuckle with hooks"]],
  ];
  for (const [kind, texts] of kinds)
    for (const text of texts)
      it(`"${text}" is a ${kind}`, () => {
        expect(kindOf(text)).toBe(kind);
      });

  // As the one or the other something would go unread: the hook of a block, the swivel of a shackle.
  const either: [text: string, kinds: RegExp][] = [
    ["eye and hook swivel", /hook or swivel/],
    ["eye hook swivel 5 t", /hook or swivel/],
    ["swivel, eye & hook", /hook or swivel/],
    ["swivel with hook", /swivel or hook/],
    ["swivel shackle", /shackle or swivel/],
    ["swivel master link", /link or swivel/],
    ["Eye bolt swivel", /eyebolt or hoist ring/],
    ["swivel eye bolt", /eyebolt or hoist ring/],
    ["swivel eyebolt", /eyebolt or hoist ring/],
    ["Ring bolt M20", /eyebolt or hoist ring/],
    ["ringbolt", /eyebolt or hoist ring/],
    ["eye bolt with ring", /eyebolt or hoist ring/],
    ["hook c/w master link", /hook or link/],
    ["shackle with eye hook", /shackle or hook/],
    ["snatch block with hook", /block or load block or hook/],
    ["eyebolt with shackle", /eyebolt or shackle/],
    ["chain sling hook", /hook or chain sling/],
    ["chain leg hook", /chain sling or hook/],
    ["wire rope sling shackle", /wire rope sling or shackle/],
    ["guy rope turnbuckle", /standing rope or turnbuckle/],
    ["chain sling (self-locking hooks)", /hook or chain sling/],
    ["hook and chain sling", /hook or chain sling/],
    ["chain sling and shackle", /chain sling or shackle/],
    ["wire rope sling with chain", /wire rope sling or chain sling/],
    ["hoist rope with hook block", /running rope or .*load block/],
    ["spreader beam c/w chain slings", /lifting beam or chain sling/],
  ];
  for (const [text, names] of either)
    it(`"${text}" is refused as two kinds`, () => {
      expect(matchKind(text)).toMatchObject({ ok: false, why: expect.stringMatching(names) });
    });

  it("what is fitted to gear that is not in the catalogue is not judged in its place", () => {
    for (const text of ["wire rope with hook", "floor jack with shackle", "bolt with ring", "ring nut"])
      expect(matchKind(text), text).toMatchObject({ ok: false, why: expect.stringContaining("is not a gear kind in this catalogue") });
  });
});

describe("rope that resists rotation", () => {
  for (const text of [
    "Spin-resistant hoist rope",
    "Non-spin hoist line",
    "non spin rope",
    "anti-spin crane rope",
    "Nonrotating hoist rope",
    "rotation resistant load line",
    "low-rotation hoist rope",
    "RR hoist rope",
    "hoist rope (rot. res.)",
    "35x7 hoist rope",
    "19x7 hoist rope",
    "hoist rope 19 x 7",
    "hoist rope 18×7",
    "19x19 crane rope",
    "34x7 load line",
    "18x7 rope",
    "35xK7 winch rope",
    "4x39 hoist rope",
    "8x25 spin resistant hoist rope",
    "hoist rope with 19x7 construction",
  ])
    it(`"${text}" is one`, () => {
      expect(kindOf(text)).toBe("rotation resistant rope");
    });
  it("may be a pendant, which is asked", () => {
    for (const text of ["rotation-resistant pendant", "pendant 19x7"])
      expect(matchKind(text), text).toMatchObject({ ok: false, why: expect.stringMatching(/could be .*rotation resistant rope/) });
  });
  it("is not told by six or eight strands, by lengths or by sizes of other gear", () => {
    for (const text of [
      "hoist rope 6x36",
      "hoist rope 6x19 IWRC",
      "hoist rope 8x25",
      "hoist rope 13 mm x 100 m",
      "hoist rope 3/4 x 100 ft",
      "hoist rope 19 x 200",
      "hoist rope 12 x 7 m",
    ])
      expect(kindOf(text), text).toBe("running rope");
    for (const text of ["web sling 30 x 7", "roundsling 20 x 6"]) expect(kindOf(text), text).toMatch(/web sling|roundsling/);
  });
  it("in a sling is its construction", () => {
    for (const text of ["rotation resistant wire rope sling", "19x7 wire rope sling", "non-rotating cable sling"])
      expect(kindOf(text), text).toBe("wire rope sling");
  });
});

describe("chain and webbing that lift nothing", () => {
  for (const text of [
    "Mooring chain",
    "Barrier chain",
    "Galvanised chain",
    "Galvanized chain",
    "chain sling, galvanised",
    "safety chain",
    "guard chain",
    "skid chain",
    "snow chain",
    "tyre chain",
    "jack chain",
    "bicycle chain",
    "decorative chain",
    "sash chain",
    "welded steel chain",
    "steel chain",
    "ship's chain",
    "motorcycle chain",
    "yellow chain",
    "alloy snow chain",
  ])
    it(`"${text}" is no alloy chain sling`, () => {
      expect(matchKind(text)).toMatchObject({
        ok: false,
        why: expect.stringContaining("only alloy chain of grade 80 or 100 is in this catalogue"),
      });
    });
  it("a bare chain keeps its counts, sizes and grades", () => {
    for (const text of ["chain, 10 mm", "2 leg chain 3/8 G80", "chain no. 4", "Chain C-12", "lifting chain"])
      expect(kindOf(text), text).toBe("chain sling");
  });
  for (const text of [
    "Ratchet strap webbing",
    "Webbing lashing",
    "Safety harness webbing",
    "tie down",
    "tie-down webbing",
    "cargo strap",
    "cargo strap polyester sling",
    "recovery strap",
    "tow strap",
    "towing web sling",
    "webbing strap",
    "seat belt webbing",
    "nylon climbing sling",
    "mooring fibre rope",
  ])
    it(`"${text}" is no sling`, () => {
      expect(matchKind(text)).toMatchObject({ ok: false, why: expect.stringContaining("is not a gear kind in this catalogue") });
    });
  it("webbing with its size or stuff is a web sling", () => {
    for (const text of ["webbing", "webbing 2 t", "polyester webbing 50 mm x 3 m"]) expect(kindOf(text), text).toBe("web sling");
  });
});

describe("what people call a part", () => {
  const parts: [kind: string, text: string, part: string | null, stress?: string][] = [
    ["hook", "saddle", "saddle", "high"],
    ["hook", "Bowl", "saddle", "high"],
    ["hook", "base of hook", "saddle", "high"],
    ["hook", "eye", "eye", "high"],
    ["hook", "throat", "throat", "high"],
    ["hook", "shank", "shank", "moderate"],
    ["hook", "body", "body", "moderate"],
    ["hook", "tip", "tip", "low"],
    ["hook", "point", "tip", "low"],
    ["hook", "flange", null],
    ["shackle", "bow", "bow", "moderate"],
    ["shackle", "pin", "pin", "moderate"],
    ["shackle", "ears", "ear", "moderate"],
    ["shackle", "crown", "bow", "moderate"],
    ["link", "crown", "crown", "moderate"],
    ["link", "side", "side", "moderate"],
    ["swivel", "case", "case", "moderate"],
    ["block", "side plate", "shell", "moderate"],
    ["block", "sheave", "sheave", "moderate"],
    ["eyebolt", "eye", "eye", "moderate"],
    ["eyebolt", "thread", "shank", "moderate"],
    ["eye nut", "ring", "eye", "moderate"],
    ["lifting beam", "padeye", "eye", "moderate"],
    ["load block", "bowl", "saddle", "high"],
    ["load block", "cheek", "shell", "moderate"],
    ["plate clamp", "cam", "tooth", "moderate"],
    ["sheave", "rim", "flange", "moderate"],
    ["chain sling", "link", "link", "moderate"],
    ["chain sling", "master link", "master link", "moderate"],
    ["web sling", "", null],
  ];
  for (const [kind, text, part, stress] of parts)
    it(`"${text}" of a ${kind} is ${part ?? "none"}`, () => {
      expect(matchPart(kindNamed(kind), text)).toEqual(part === null ? null : { part, stress });
    });
});

describe("rope constructions", () => {
  const cases: [text: string, construction: string | null][] = [
    ["strand laid", "strand laid"],
    ["Strand-laid", "strand laid"],
    ["6x19", "strand laid"],
    ["6 x 37 IWRC", "strand laid"],
    ["cable laid", "cable laid"],
    ["Cable-laid", "cable laid"],
    ["braided under 8", "braided under 8"],
    ["braided fewer than 8 parts", "braided under 8"],
    ["braided 8 or more", "braided 8 or more"],
    ["braided 8 parts", "braided 8 or more"],
    ["running rope", "running rope"],
    ["hoist rope", "running rope"],
    ["rotation resistant", null],
    ["non-rotating", null],
    ["standing rope", "standing rope"],
    ["pendant", "standing rope"],
    ["braided", null],
    ["spiral", null],
    ["", null],
    ["6x19 IWRC", "strand laid"],
    ["6x19S IWRC", "strand laid"],
    ["strand laid, 6x19", "strand laid"],
    ["braided, 8 parts", "braided 8 or more"],
    ["8-part braided", "braided 8 or more"],
    ["braided 8 or more parts, 12 mm", "braided 8 or more"],
    ["braided 6 parts", "braided under 8"],
    ["not applicable", null],
    ["not cable laid", null],
    ["no cable laid", null],
    ["unknown, cable laid", null],
    ["n/a", null],
    ["N/A cable laid", null],
    ["non cable laid", null],
    ["cable laid?", null],
    ["maybe cable laid", null],
    ["cable", null],
    ["aircraft cable", null],
    ["stainless cable 7x19", "strand laid"],
    ["uncable laid", null],
    ["outstanding", null],
    ["outrunning", null],
    ["guyed", null],
    ["16x19", null],
    ["braided 8", null],
    ["braided 8 mm", null],
    ["braided 8 mm, 6 parts", null],
    ["braided 8 or more mm", null],
    ["braided under 8 mm", null],
    ['braided over 8"', null],
    ["braided 6", null],
    ["braided 6 mm", null],
    ["braided 80 parts", null],
    ["braided 8.5 parts", null],
    ["cable laid or strand laid", null],
    // As makers write them: strands x wires, their arrangement, core and grade.
    ["6x25FW", "strand laid"],
    ["6x36WS+IWRC", "strand laid"],
    ["6x36WS", "strand laid"],
    ["6x19S-IWRC", "strand laid"],
    ["6 x 37 FC", "strand laid"],
    ["6x19 IWRC EIPS", "strand laid"],
    ["6X36 WS/IWRC", "strand laid"],
    ["6xK31WS", "strand laid"],
    ["8xK26WS", "strand laid"],
    ["6x19(S)", "strand laid"],
    ["6 strand IWRC", "strand laid"],
    ["7x7", "strand laid"],
    ["6x19, galvanised", "strand laid"],
    ["EIPS IWRC", null],
    ["6x19 mm", null],
    ["6x19mm", null],
    ["6x190", null],
    ["6x3x19", null],
    ["7x7x7", null],
    ["5x19", null],
    ["9x19", null],
    ["braided 6x19", null],
    ["6x19 plaited", null],
    ["cable laid 6x19", null],
    ["6 strand braided", null],
    ["19x7", null],
    ["35x7", null],
    ["8x25 spin resistant", null],
    ["6x19 rotation resistant", null],
    ["running rope 19x7", null],
    ["hoist rope, spin-resistant", null],
    ["19x7 rotation resistant", null],
  ];
  for (const [text, construction] of cases)
    it(`"${text}" is ${construction ?? "none"}`, () => {
      expect(matchVariant(CONSTRUCTIONS, text)).toBe(construction);
    });
});

describe("what a row says of its construction", () => {
  const read = (text: string, gear = "wire rope sling") => {
    const cells: Cells = { value: (id) => (id === "construction" ? text : null), unit: () => null, heading: (id) => field(id).heading };
    const { variants } = kindNamed("wire rope sling");
    if (variants === undefined) throw new Error("wire rope slings have constructions");
    const said = readVariant(variants, cells, gear);
    return said.kind === "known" ? said.variant : said.kind;
  };
  it("is the strictest of slings where nothing is recorded, however that is written", () => {
    for (const text of ["", "n/a", "N/A", "na", "-", "not applicable", "not recorded"]) expect(read(text), text).toBe("strand laid");
  });
  it("cannot be used where it names none", () => {
    for (const text of ["19x7", "8x25 spin resistant", "braided 6x19", "6x19?", "not 6x25FW"]) expect(read(text), text).toBe("refused");
    for (const text of ["unknown", "not cable laid", "aircraft cable", "braided 8 mm", "outstanding"])
      expect(read(text), text).toBe("refused");
  });
  it("that names neither strands nor parts is as good as blank", () => {
    for (const text of ["EIPS IWRC", "IWRC", "xips, fibre core", "galvanized 1770"]) expect(read(text), text).toBe("strand laid");
    expect(read("EIPS IWRC", "cable-laid wire rope sling")).toBe("cable laid");
    expect(read("IWRC of unknown make")).toBe("refused");
  });
  it("does not go with a gear's name that says otherwise", () => {
    expect(read("", "19x7 wire rope sling")).toBe("refused");
    expect(read("6x36", "non-rotating wire rope sling")).toBe("refused");
    expect(read("6x36", "cable laid wire rope sling")).toBe("refused");
  });
  it("is told by the gear's own name, unless that takes it back", () => {
    expect(read("", "cable-laid wire rope sling")).toBe("cable laid");
    for (const gear of ["wire rope sling, not cable laid", "non cable laid wire rope sling", "cable laid? wire rope sling"])
      expect(read("", gear), gear).toBe("strand laid");
  });
});
