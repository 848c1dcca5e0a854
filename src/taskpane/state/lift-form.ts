/** What is typed and picked for one lift, and how each change alters it. Pure. */
import type { HookupPlace } from "../../engine/lift/judge-lift";

/** What is typed, as typed: nothing is filled in that the user did not choose, except where angles are measured from. */
export interface LiftInputs {
  readonly load: string;
  readonly loadUnit: string;
  readonly legs: string;
  readonly angle: string;
  readonly angleFrom: string;
  readonly hitch: string;
  readonly chokeAngle: string;
  readonly temperature: string;
  readonly temperatureUnit: string;
  readonly grade: string;
}
export interface Picked {
  readonly id: string;
  readonly place: HookupPlace;
  /** Side load angle in degrees, as typed. */
  readonly side: string;
}
export interface LiftForm {
  readonly inputs: LiftInputs;
  readonly strict: boolean;
  readonly picked: readonly Picked[];
  readonly search: string;
  /** Sheet that the lift was last written on, or "". */
  readonly sheet: string;
}
export type LiftChange =
  | { readonly kind: "pick"; readonly id: string; readonly place: HookupPlace }
  | { readonly kind: "drop"; readonly id: string }
  | { readonly kind: "place"; readonly id: string; readonly place: HookupPlace }
  | { readonly kind: "side"; readonly id: string; readonly side: string }
  | { readonly kind: "set"; readonly name: keyof LiftInputs; readonly value: string }
  | { readonly kind: "strict"; readonly on: boolean }
  | { readonly kind: "search"; readonly text: string }
  | { readonly kind: "written"; readonly sheet: string }
  | { readonly kind: "start again" };
export const NO_LIFT: LiftForm = {
  inputs: {
    load: "",
    loadUnit: "",
    legs: "",
    angle: "",
    angleFrom: "horizontal",
    hitch: "",
    chokeAngle: "",
    temperature: "",
    temperatureUnit: "",
    grade: "",
  },
  strict: false,
  picked: [],
  search: "",
  sheet: "",
};
export function changed(form: LiftForm, change: LiftChange): LiftForm {
  switch (change.kind) {
    case "search":
      return { ...form, search: change.text };
    case "written":
      return { ...form, sheet: change.sheet };
    case "start again":
      return NO_LIFT;
    default:
      // What stands on the sheet is no longer this lift.
      return { ...altered(form, change), sheet: "" };
  }
}
function altered(form: LiftForm, change: Exclude<LiftChange, { kind: "search" | "written" | "start again" }>): LiftForm {
  const one = (id: string, more: Partial<Picked>): LiftForm => ({
    ...form,
    picked: form.picked.map((p) => (p.id === id ? { ...p, ...more } : p)),
  });
  switch (change.kind) {
    case "pick":
      return form.picked.some((p) => p.id === change.id)
        ? form
        : { ...form, picked: [...form.picked, { id: change.id, place: change.place, side: "" }] };
    case "drop":
      return { ...form, picked: form.picked.filter((p) => p.id !== change.id) };
    case "place":
      return one(change.id, { place: change.place });
    case "side":
      return one(change.id, { side: change.side });
    case "set":
      return { ...form, inputs: { ...form.inputs, [change.name]: change.value } };
    case "strict":
      return { ...form, strict: change.on };
  }
}
