/** A beam clamp on a flange, its spindle across, its bail below. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const beamClamp: Drawing = {
  picture: (
    <>
      <Plate d="M102 10 H118 V62 H102 Z" />
      <Plate d="M40 62 H180 V76 H40 Z" />
      <Plate d="M30 54 H58 V64 H44 V74 H58 V84 L88 130 H70 L30 92 Z" />
      <Plate d="M190 54 H162 V64 H176 V74 H162 V84 L132 130 H150 L190 92 Z" />
      <Bar width={10} cap="round" d="M16 108 H204" />
      <Thin d="M60 103 L66 113 M70 103 L76 113 M144 103 L150 113 M154 103 L160 113" />
      <Disc x={52} y={58} r={6} />
      <Disc x={168} y={58} r={6} />
      <Bar width={13} d="M84 130 C84 178 94 196 110 196 C126 196 136 178 136 130" />
    </>
  ),
  spots: {
    wheel: { at: [50, 54], label: [24, 30] },
    jaw: { at: [178, 70], label: [204, 44] },
    spindle: { at: [198, 110], label: [204, 140] },
    body: { at: [42, 90], label: [18, 140] },
    bail: { at: [132, 170], label: [188, 184] },
  },
};
