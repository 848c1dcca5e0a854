/** What the log leaves open, on one screen: columns that are not understood, one press each or one for all, and the unit of bare sizes. */
import { Button, makeStyles, Select, tokens } from "@fluentui/react-components";
import { useEffect, useId, useRef, useState } from "react";
import { field, type FieldId } from "../../engine/columns";
import type { ColumnQuestion as Question, LogQuestions } from "../../engine/log/questions";
import type { Unit } from "../../engine/numbers/lengths";
import { count } from "../../engine/words";
import { Section } from "../shared/Section";
import { CHOICES } from "./choices";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  row: { display: "flex", flexWrap: "wrap", gap: "6px", alignItems: "center" },
  list: { listStyleType: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column" },
  question: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    padding: "6px 0 8px 8px",
    borderLeft: `3px solid ${tokens.colorStatusWarningBorder2}`,
    borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
    overflowWrap: "anywhere",
  },
  heading: { fontWeight: tokens.fontWeightSemibold, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  samples: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  other: { minWidth: 0, flex: "1 1 110px" },
});
export interface ColumnAnswer {
  readonly heading: string;
  /** The reading that it holds; null where it is not judged. */
  readonly field: FieldId | null;
}
interface Props {
  questions: LogQuestions;
  /** What the gear of this log needs and no column gives: the likeliest answers. */
  lacked: readonly FieldId[];
  disabled: boolean;
  onAnswer: (answers: readonly ColumnAnswer[]) => void;
  onUnit: (unit: Unit) => void;
}
export function Questions({ questions: { columns, unit }, lacked, disabled, onAnswer, onUnit }: Props) {
  return (
    <>
      {columns.length > 0 && <Columns questions={columns} lacked={lacked} disabled={disabled} onAnswer={onAnswer} />}
      {unit !== null && <UnitQuestion question={unit} disabled={disabled} onUnit={onUnit} />}
    </>
  );
}
const sample = ({ heading, text }: { readonly heading: string; readonly text: string }): string => `${text} under ${heading}`;
const UNITS: readonly (readonly [Unit, string])[] = [
  ["mm", "Millimetres"],
  ["in", "Inches"],
];
interface UnitProps {
  question: NonNullable<LogQuestions["unit"]>;
  disabled: boolean;
  onUnit: (unit: Unit) => void;
}
function UnitQuestion({ question: { items, samples }, disabled, onUnit }: UnitProps) {
  const styles = useStyles();
  return (
    <Section title="In which unit are the sizes?">
      <p className={styles.text}>
        {count(items, "item has", "items have")} sizes without a unit, such as {samples.map(sample).join(", ")}. The answer holds for this
        log and is kept in the workbook. If the rows are in different units, give the log a column Unit instead, fill it, then press Read
        again.
      </p>
      <div className={styles.row} role="group" aria-label="Unit of the sizes">
        {UNITS.map(([unit, name]) => (
          <Button
            key={unit}
            size="small"
            disabledFocusable={disabled}
            onClick={() => {
              onUnit(unit);
            }}
          >
            {name}
          </Button>
        ))}
      </div>
    </Section>
  );
}
interface ColumnProps {
  questions: readonly Question[];
  lacked: readonly FieldId[];
  disabled: boolean;
  onAnswer: (answers: readonly ColumnAnswer[]) => void;
}
function Columns({ questions, lacked, disabled, onAnswer }: ColumnProps) {
  const styles = useStyles();
  const list = useRef<HTMLUListElement>(null);
  const answered = useRef<number | null>(null);
  // A question that is answered goes, and the hand that answered it finds the next one in its place.
  useEffect(() => {
    const at = answered.current;
    answered.current = null;
    if (at === null) return;
    const rows = list.current?.children;
    rows
      ?.item(Math.min(at, rows.length - 1))
      ?.querySelector<HTMLElement>("button")
      ?.focus();
  }, [questions]);
  const proposed = questions.filter(({ proposal }) => proposal !== null);
  return (
    <Section title={`${count(questions.length, "column needs", "columns need")} an answer`}>
      <p className={styles.text}>
        Say what {questions.length === 1 ? "this column holds" : "these columns hold"}. Until then an item with something in{" "}
        {questions.length === 1 ? "it" : "one of them"} has no verdict. Your answers are kept in this workbook.
      </p>
      {questions.length > 1 && (
        <div className={styles.row} role="group" aria-label="One answer for all">
          {proposed.length > 1 && (
            <Button
              size="small"
              disabledFocusable={disabled}
              onClick={() => {
                onAnswer(proposed.map(({ heading, proposal }) => ({ heading, field: proposal })));
              }}
            >
              Take all {proposed.length} proposals
            </Button>
          )}
          <Button
            size="small"
            disabledFocusable={disabled}
            onClick={() => {
              onAnswer(questions.map(({ heading }) => ({ heading, field: null })));
            }}
          >
            Judge none of these {questions.length}
          </Button>
        </div>
      )}
      <ul ref={list} className={styles.list} aria-label="Columns that need an answer">
        {questions.map((question, at) => (
          <OneQuestion
            key={question.column}
            question={question}
            lacked={lacked}
            disabled={disabled}
            onAnswer={(answers) => {
              answered.current = at;
              onAnswer(answers);
            }}
          />
        ))}
      </ul>
    </Section>
  );
}
function OneQuestion({ question, lacked, disabled, onAnswer }: Omit<ColumnProps, "questions"> & { question: Question }) {
  const styles = useStyles();
  const id = useId();
  // Chosen from the list and not taken yet: an arrow key that passes over an entry must not answer with it.
  const [chosen, setChosen] = useState<FieldId | null>(null);
  const { heading, proposal, samples, items } = question;
  const answer = (given: FieldId | null): void => {
    onAnswer([{ heading, field: given }]);
  };
  return (
    <li className={styles.question} role="group" aria-labelledby={id}>
      <span id={id} className={styles.heading}>
        {heading === "" ? "(blank heading)" : heading}
      </span>
      <span className={styles.samples}>
        {count(items, "item")}: {samples.map((text) => `“${text}”`).join(", ")}
        {items > samples.length ? " ..." : ""}
      </span>
      <div className={styles.row}>
        {proposal !== null && (
          <Button
            size="small"
            disabledFocusable={disabled}
            onClick={() => {
              answer(proposal);
            }}
          >
            Read as {field(proposal).heading}
          </Button>
        )}
        <Button
          size="small"
          disabledFocusable={disabled}
          onClick={() => {
            answer(null);
          }}
        >
          Not judged
        </Button>
        <Select
          size="small"
          className={styles.other}
          aria-label={`${heading} is read as`}
          disabled={disabled}
          value={chosen ?? ""}
          onChange={(_, data) => {
            setChosen(CHOICES.find((one) => one === data.value) ?? null);
          }}
        >
          <option value="">Read as ...</option>
          {lacked.length > 0 && <Group label="What this log lacks" fields={lacked} />}
          <Group label={lacked.length > 0 ? "All others" : "All readings"} fields={CHOICES.filter((one) => !lacked.includes(one))} />
        </Select>
        {chosen !== null && (
          <Button
            size="small"
            appearance="primary"
            disabledFocusable={disabled}
            onClick={() => {
              answer(chosen);
            }}
          >
            Read as {field(chosen).heading}
          </Button>
        )}
      </div>
    </li>
  );
}
function Group({ label, fields }: { label: string; fields: readonly FieldId[] }) {
  return (
    <optgroup label={label}>
      {fields.map((one) => (
        <option key={one} value={one}>
          {field(one).heading}
        </option>
      ))}
    </optgroup>
  );
}
