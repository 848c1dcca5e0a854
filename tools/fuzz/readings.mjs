/** Headings of what is measured, as inspection logs have them. Written from the trade's public language. Common practice, no source. */

export const NEW = ["as-new", "new", "original", "orig.", "when new", "as new", "Orig", "catalogue"];
export const NOW = ["now", "measured", "actual", "meas.", "present", "today", "current", "as measured"];
/** What a part's size is called. `register` is the plainest. */
export const PARTS = {
  throat: { register: "Throat", names: ["Throat", "Throat opening", "Hook throat", "Mouth opening", "Throat gap", "Hook opening"] },
  section: { register: "Section", names: ["Section"] },
  pin: { register: "Pin", names: ["Pin", "Pin dia", "Pin diameter", "Pin dia."] },
  outerWire: { register: "Outer wire", names: ["Outer wire", "Mesh wire"] },
  hook: { register: "Hook section", names: ["Hook section", "Hook saddle", "Hook thickness"] },
  tooth: { register: "Tooth", names: ["Tooth", "Tooth height", "Teeth"] },
};
/** The section goes by its place on the kind, in a log of that kind alone. */
export const SECTION_OF = {
  hook: ["Section", "Saddle", "Bowl", "Saddle section", "Bowl thickness", "Section at saddle"],
  shackle: ["Section", "Bow", "Bow dia", "Bow diameter", "Body dia", "Bow section"],
  link: ["Section", "Crown", "Section at crown", "Crown dia", "Material dia"],
  swivel: ["Section", "Eye section", "Section"],
  block: ["Section", "Side plate", "Cheek plate", "Shell"],
  eyebolt: ["Section", "Eye section", "Section dia"],
  "lifting beam": ["Section", "Section of eye"],
};
/** Single readings: `[headings, needs a unit]`; the first is the register's. */
export const SINGLES = {
  twist: ["Twist deg", "Twist", "Twist (deg)", "Twist °", "Twist angle", "Twist (degrees)", "Twist in degrees"],
  clearance: ["Swivel clearance", "Clearance", "Shoulder clearance", "End play", "Running clearance"],
  lay: ["Broken wires in a lay", "Broken wires per lay", "Broken wires/lay", "Broken wires in one lay", "No. of broken wires per lay"],
  oneStrand: ["Broken wires in one strand", "Broken wires per strand", "Broken wires/strand", "Broken wires in 1 strand"],
  six: ["Broken wires in 6 diameters", "Broken wires in 6d", "Broken wires over 6 d"],
  thirty: ["Broken wires in 30 diameters", "Broken wires in 30d", "Broken wires over 30 d"],
  atEnd: ["Broken wires at the end", "Broken wires at end", "Broken wires at end connection", "Broken wires at termination"],
  size: ["Size", "Nominal size", "Nominal dia", "Nominal diameter", "Nom. dia."],
  chainSize: ["Size", "Chain size", "Nominal size", "Nominal chain size"],
  link: [
    "Section now",
    "Thinnest link",
    "Link thickness now",
    "Thinnest link measured",
    "Link thickness measured",
    "Link thickness actual",
  ],
  rope: ["Rope diameter now", "Rope diameter measured", "Rope dia now", "Measured rope diameter"],
  groove: ["Groove diameter", "Groove", "Groove gauge"],
  clipsFitted: ["Clips fitted", "Number of clips", "No. of clips", "Clips"],
  spacing: ["Clip spacing", "Spacing of clips", "Spacing"],
  span: ["Span", "Beam length", "Span of beam"],
  leastLink: ["Maker's least link", "Least link (maker)", "Maker's least link thickness"],
  gauged: ["Chain over gauged links now", "Gauged links now", "Chain over gauged links measured"],
  gaugedMost: ["Maker's gauged length", "Gauged length (maker)"],
  nick: ["Nick depth", "Nick", "Depth of nick", "Gouge depth"],
  gauge: ["Gauge reads to", "Gauge resolution", "Gauge"],
  bend: ["Permanent bend", "Permanent deflection"],
};
export const ROLES = { asNew: NEW, now: NOW };

/** A heading of a pair: thing and role in one of the orders that logs have. */
export const paired = (name, role, d) =>
  d.weighted([
    [6, `${name} ${role}`],
    [3, `${role[0].toUpperCase()}${role.slice(1)} ${name[0].toLowerCase()}${name.slice(1)}`],
    [2, `${name} (${role})`],
    [1, `${name} - ${role}`],
    [1, `${name}, ${role}`],
  ]);
/** The unit behind a heading. */
export const inUnit = (heading, unit, d) =>
  d.weighted([
    [6, `${heading} (${unit})`],
    [2, `${heading} ${unit}`],
    [1, `${heading} [${unit}]`],
    [1, `${heading}, ${unit}`],
    [0.5, unit === "in" ? `${heading} (inches)` : `${heading} (mm)`],
  ]);
/** Small things that clerks do to any heading and that mean nothing. */
export const dressed = (heading, d) =>
  d.weighted([
    [80, heading],
    [6, heading.toUpperCase()],
    [5, heading.toLowerCase()],
    [3, `${heading}:`],
    [2, ` ${heading} `],
    [2, heading.replaceAll(" ", "  ")],
    [1, heading.replace(" ", "\n")],
    [1, heading.replace(" ", "\u00a0")],
  ]);
