/** Chooses the rule sets in force; at least one stays. */
import { Button, Checkbox, makeStyles, tokens } from "@fluentui/react-components";
import { HOLDS } from "../../engine/pages/about-rules";
import { BASES, BASIS_IDS, type BasisId } from "../../engine/rules/rule-sets";

const useStyles = makeStyles({
  rule: { display: "flex", flexDirection: "column" },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  holds: { paddingLeft: "32px" },
});
interface Props {
  basis: readonly BasisId[];
  /** True when the workbook has a sheet of house limits, which is then in force. */
  house: boolean;
  onChange: (basis: readonly BasisId[]) => void;
  onHouse: () => void;
}
export function RulesControl({ basis, house, onChange, onHouse }: Props) {
  const styles = useStyles();
  const last = basis.length === 1;
  return (
    <>
      {BASIS_IDS.map((id) => (
        <div key={id} className={styles.rule}>
          <Checkbox
            label={BASES[id].name}
            checked={basis.includes(id)}
            disabled={last && basis.includes(id)}
            aria-describedby={`holds-${id}`}
            onChange={(_, data) => {
              onChange(BASIS_IDS.filter((one) => (one === id ? data.checked === true : basis.includes(one))));
            }}
          />
          <p id={`holds-${id}`} className={`${styles.text} ${styles.holds}`}>
            {HOLDS[id]}.
          </p>
        </div>
      ))}
      <p className={styles.text}>
        {house
          ? `House limits are in force from the sheet House limits. ${HOLDS.house}.`
          : "Your own limits can stand beside these, on a sheet of their own."}
      </p>
      {!house && <Button onClick={onHouse}>Make a sheet for house limits</Button>}
      <p className={styles.text}>
        {last
          ? "One set must stay in force. Tick another before you take this one off."
          : "With several in force, the strictest finding decides."}
      </p>
    </>
  );
}
