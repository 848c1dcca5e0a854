/** The cells that this item needs, as links to the cells: first those that are blank or cannot be read. */
import { Link, makeStyles, tokens } from "@fluentui/react-components";
import { Folded, Section } from "../shared/Section";
import type { NeededCell } from "./needed-cells";

const useStyles = makeStyles({
  list: {
    listStyleType: "none",
    margin: 0,
    padding: 0,
    display: "flex",
    flexDirection: "column",
    gap: "3px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  link: { fontSize: "inherit", lineHeight: "inherit", textAlign: "left", textDecorationLine: "underline" },
  quiet: { color: tokens.colorNeutralForeground2 },
});
interface Props {
  cells: readonly NeededCell[];
  onShow: (column: number) => void;
}
export function NeededCells({ cells, onShow }: Props) {
  const lacking = cells.filter(({ lacks }) => lacks);
  const there = cells.filter(({ lacks }) => !lacks);
  return (
    <>
      {lacking.length > 0 && (
        <Section title="Cells to fill">
          <Cells cells={lacking} label="Cells to fill" onShow={onShow} />
        </Section>
      )}
      {there.length > 0 && (
        <Folded title="Cells that are filled" aside={String(there.length)}>
          <Cells cells={there} label="Cells that are filled" onShow={onShow} />
        </Folded>
      )}
    </>
  );
}
function Cells({ cells, label, onShow }: Props & { label: string }) {
  const styles = useStyles();
  return (
    <ul className={styles.list} aria-label={label}>
      {cells.map(({ field, heading, column, text, lacks }) => (
        <li key={field}>
          {column === null ? (
            heading
          ) : (
            <Link
              as="button"
              className={styles.link}
              onClick={() => {
                onShow(column);
              }}
            >
              {heading}
            </Link>
          )}{" "}
          <span className={styles.quiet}>
            {column === null ? "the sheet has no such column" : text === "" ? "blank" : lacks ? `“${text}” cannot be used` : text}
          </span>
        </li>
      ))}
    </ul>
  );
}
