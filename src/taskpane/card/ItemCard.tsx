/** One item: what decides, the drawing, each check with its bar, what is missing, and when it is due. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { ArrowLeft16Regular } from "@fluentui/react-icons/svg/arrow-left";
import { Fragment, type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { leadOf } from "../../engine/check/sentences";
import { outOfUse } from "../../engine/decision";
import { actionOf } from "../../engine/report/fit-for-use";
import type { ItemResult, Report } from "../../engine/report/model";
import { capital, count } from "../../engine/words";
import { DecisionChip, DueChip } from "../shared/Chip";
import { dueText } from "../shared/due-text";
import { Section } from "../shared/Section";
import { unbroken } from "../shared/unbroken";
import { kindOf, nameOf } from "../shared/words";
import { CheckView } from "./CheckView";
import { Comparison } from "./Comparison";
import { acrossIn } from "./direction";
import { factsOf } from "./facts";
import { groupChecks, numberParts } from "./group-checks";
import { neededCells } from "./needed-cells";
import { NeededCells } from "./NeededCells";
import { PartPicture } from "./PartPicture";

const useStyles = makeStyles({
  card: { display: "flex", flexDirection: "column", gap: "14px", padding: "8px 12px 16px" },
  bar: { display: "flex", flexWrap: "wrap", justifyContent: "space-between", gap: "6px" },
  back: { minWidth: 0, marginLeft: "-8px" },
  head: { display: "flex", flexDirection: "column", gap: "6px" },
  title: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: "anywhere",
    ":focus": { outlineStyle: "none" },
  },
  about: { margin: 0, color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  chips: { display: "flex", flexWrap: "wrap", alignItems: "center", gap: "6px" },
  text: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, overflowWrap: "anywhere" },
  facts: {
    display: "grid",
    gridTemplateColumns: "auto minmax(0, 1fr)",
    gap: "2px 10px",
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  name: { color: tokens.colorNeutralForeground2 },
  fact: { margin: 0, overflowWrap: "anywhere" },
  small: {
    margin: 0,
    paddingLeft: "18px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  checks: { listStyleType: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", gap: "8px" },
});
interface Props {
  item: ItemResult;
  report: Pick<Report, "headings" | "asOf" | "basis">;
  onBack: () => void;
  /** Selects the item's row in the sheet, or one cell of it. */
  onShow: (column?: number) => void;
}
export function ItemCard({ item, report, onBack, onShow }: Props) {
  const styles = useStyles();
  const title = useRef<HTMLHeadingElement>(null);
  const { verdict } = item;
  const { headings, asOf } = report;
  const parts = numberParts(verdict);
  const groups = groupChecks(verdict);
  const lead = leadOf(verdict.decision, verdict.parts);
  const needed = useMemo(() => neededCells(item, report), [item, report]);
  const across = useMemo(() => acrossIn(verdict), [verdict]);
  const kindAndPlace = [kindOf(item), item.place, item.assembly === "" ? "" : `part of ${item.assembly}`]
    .filter((text) => text !== "")
    .join(", ");
  useEffect(() => {
    title.current?.focus();
  }, []);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    onBack();
  };
  return (
    <article className={styles.card} aria-labelledby="card-title" onKeyDown={onKeyDown}>
      <div className={styles.bar}>
        <Button appearance="subtle" className={styles.back} icon={<ArrowLeft16Regular />} onClick={onBack}>
          Back
        </Button>
        <Button
          onClick={() => {
            onShow();
          }}
        >
          Show in the sheet
        </Button>
      </div>
      <div className={styles.head}>
        <h2 id="card-title" ref={title} tabIndex={-1} className={styles.title}>
          {nameOf(item)}
        </h2>
        <p className={styles.about}>{kindAndPlace}</p>
        <div className={styles.chips}>
          <DecisionChip decision={verdict.decision} late={item.dueState === "OVERDUE"} />
          <DueChip state={item.dueState} day={item.nextDue} quiet={item.tagged || outOfUse(verdict.decision)} />
          {item.tagged && <b>Tagged out</b>}
        </div>
        <p className={styles.text}>
          <b>{actionOf(item)}</b>
        </p>
        <p className={styles.text}>{unbroken(lead)}</p>
        <dl className={styles.facts}>
          {factsOf(item, report).map(({ name, text }) => (
            <Fragment key={name}>
              <dt className={styles.name}>{name}</dt>
              <dd className={styles.fact}>{text}</dd>
            </Fragment>
          ))}
        </dl>
      </div>
      <PartPicture gear={item.gear} parts={parts} />
      <NeededCells cells={needed} onShow={onShow} />
      <Section title="Checks" aside={count(groups.length, "check")}>
        <ul className={styles.checks}>
          {groups.map((group) => (
            <CheckView
              key={group.key}
              group={group}
              number={parts.find((part) => part.part === group.part)?.number}
              gear={item.gear}
              across={across}
              saidAbove={group.first === verdict.parts.lead}
            />
          ))}
        </ul>
      </Section>
      {verdict.notes.length > 0 && (
        <Section title="Notes">
          <ul className={styles.small}>
            {verdict.notes.map((text) => (
              <li key={text}>{unbroken(text)}</li>
            ))}
          </ul>
        </Section>
      )}
      <Section title="Next inspection">
        <p className={styles.text}>{dueText(item, asOf)}</p>
        {item.nextDue !== null && item.dueNote !== "" && <p className={styles.about}>{capital(item.dueNote)}.</p>}
      </Section>
      <Comparison item={item} headings={headings} asOf={asOf} />
    </article>
  );
}
