/** The lift itself: load, legs, angle, hitch, heat. */
import { Checkbox, Field, Input, makeStyles, Select, tokens } from "@fluentui/react-components";
import { TWO_LEGS_ADVISED } from "../../engine/lift/judge-lift";
import { LOAD_UNITS } from "../../engine/reading/load";
import type { LiftInputs as Inputs, LiftChange, LiftForm } from "../state/lift-form";

const useStyles = makeStyles({
  // Two columns where the longest choice fits into each.
  rows: {
    display: "grid",
    fontSize: tokens.fontSizeBase200,
    gridTemplateColumns: "repeat(auto-fit, minmax(min(100%, 12.5em), 1fr))",
    gap: "6px 8px",
    alignItems: "start",
  },
  narrow: { minWidth: 0, width: "100%" },
  wide: { gridColumn: "1 / -1" },
});
interface Props {
  form: LiftForm;
  /** True where the rules in force trust two legs only, so that there is nothing to choose. */
  strictRules: boolean;
  onChange: (change: LiftChange) => void;
}
const UNIT_NAMES: Record<string, string> = { kg: "kg", t: "t (tonne, 1,000 kg)", lb: "lb", "short ton": "short ton (2,000 lb)" };
const FROM: Record<string, string> = { horizontal: "from horizontal", vertical: "from vertical", included: "between two legs" };
export function LiftInputs({ form, strictRules, onChange }: Props) {
  const styles = useStyles();
  const { inputs } = form;
  const set =
    (name: keyof Inputs) =>
    (_: unknown, data: { value: string }): void => {
      onChange({ kind: "set", name, value: data.value });
    };
  const text = (name: keyof Inputs, label: string, hint?: string) => (
    <Field size="small" label={label} {...(hint === undefined ? {} : { hint })}>
      <Input size="small" className={styles.narrow} inputMode="decimal" value={inputs[name]} onChange={set(name)} />
    </Field>
  );
  const choice = (name: keyof Inputs, label: string, choices: readonly (readonly [value: string, shown: string])[], blank?: string) => (
    <Field size="small" label={label}>
      <Select size="small" className={styles.narrow} value={inputs[name]} onChange={set(name)}>
        {blank !== undefined && <option value="">{blank}</option>}
        {choices.map(([value, shown]) => (
          <option key={value} value={value}>
            {shown}
          </option>
        ))}
      </Select>
    </Field>
  );
  const same = (words: readonly string[]): readonly (readonly [string, string])[] => words.map((word) => [word, word] as const);
  const several = inputs.legs === "3" || inputs.legs === "4" || (inputs.hitch === "basket" && inputs.legs === "2");
  return (
    <div className={styles.rows}>
      {text("load", "Load")}
      {choice(
        "loadUnit",
        "Unit of the load",
        LOAD_UNITS.map((unit) => [unit, UNIT_NAMES[unit] ?? unit] as const),
        "Choose",
      )}
      {choice("hitch", "Hitch", same(["vertical", "choker", "basket"]), "Choose")}
      {choice("legs", inputs.hitch === "basket" ? "Slings, two parts each" : "Legs", same(["1", "2", "3", "4"]), "Choose")}
      {text("angle", "Angle, degrees", inputs.legs === "1" && inputs.hitch !== "basket" ? "Blank: hangs straight" : undefined)}
      {choice("angleFrom", "Angle measured", Object.entries(FROM))}
      {inputs.hitch === "choker" && (
        <div className={styles.wide}>
          {text("chokeAngle", "Choke angle, degrees", "A sling that chokes freely hangs at more than 120.")}
        </div>
      )}
      {several && (
        <Field size="small" className={styles.wide} hint={TWO_LEGS_ADVISED}>
          <Checkbox
            checked={form.strict || strictRules}
            disabled={strictRules}
            onChange={(_, data) => {
              onChange({ kind: "strict", on: data.checked === true });
            }}
            label={
              inputs.hitch === "basket" ? "Count only two parts as carrying (else three)" : "Count only two legs as carrying (else three)"
            }
          />
        </Field>
      )}
      {text("temperature", "Temperature", "Blank: nothing hot or cold")}
      {choice(
        "temperatureUnit",
        "Temperature in",
        [
          ["C", "°C"],
          ["F", "°F"],
        ],
        "Choose",
      )}
      {inputs.temperature.trim() !== "" && (
        <div className={styles.wide}>{choice("grade", "Grade of the chain", same(["80", "100"]), "Choose")}</div>
      )}
    </div>
  );
}
