/** A titled part of a place; folded ones open and close with a press. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { type ReactNode, type Ref, useId } from "react";

const useStyles = makeStyles({
  section: { display: "flex", flexDirection: "column", gap: "6px" },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold },
  aside: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  summary: {
    cursor: "pointer",
    padding: "4px 2px",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
    borderRadius: tokens.borderRadiusMedium,
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  folded: { display: "inline", margin: 0, fontSize: "inherit", fontWeight: "inherit" },
  body: { display: "flex", flexDirection: "column", gap: "6px", paddingTop: "4px" },
});
interface Props {
  title: string;
  /** Stands after the title in lighter type, such as a count. */
  aside?: string;
  children: ReactNode;
}
interface SectionProps extends Props {
  /** For a heading that takes the focus when what held it is gone. */
  heading?: Ref<HTMLHeadingElement>;
}
export function Section({ title, aside, heading, children }: SectionProps) {
  const styles = useStyles();
  const id = useId();
  return (
    <section className={styles.section} aria-labelledby={id}>
      <h2 id={id} className={styles.title} {...(heading === undefined ? {} : { ref: heading, tabIndex: -1 })}>
        {title}
        {aside !== undefined && <span className={styles.aside}> {aside}</span>}
      </h2>
      {children}
    </section>
  );
}
export function Folded({ title, aside, children, open = false }: Props & { open?: boolean }) {
  const styles = useStyles();
  return (
    <details open={open}>
      {/* office.js hands the focus to the sheet after the last control that it knows; a tabindex makes this one of them. */}
      <summary tabIndex={0} className={styles.summary}>
        <h2 className={styles.folded}>
          {title}
          {aside !== undefined && <span className={styles.aside}> {aside}</span>}
        </h2>
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
