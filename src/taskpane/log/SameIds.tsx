/** Ids that stand on more than one row, with the rows; a press selects the row in the sheet. */
import { Button, makeStyles } from "@fluentui/react-components";
import { CappedList } from "../shared/CappedList";
import type { SameId } from "./lacks";

const useStyles = makeStyles({
  rows: { display: "inline-flex", flexWrap: "wrap", gap: "2px 4px" },
});
interface Props {
  ids: readonly SameId[];
  /** The row's number as the sheet shows it. */
  numberOf: (row: number) => number;
  /** Null where the sheet that is shown is not the log. */
  onShow: ((row: number) => void) | null;
}
export function SameIds({ ids, numberOf, onShow }: Props) {
  const styles = useStyles();
  if (ids.length === 0) return null;
  return (
    <CappedList
      label="Rows of these ids"
      entries={ids}
      render={({ id, rows }) => (
        <>
          <b>{id === "" ? "No id" : id}</b>:{" "}
          {onShow === null ? (
            `row ${rows.map(numberOf).join(", row ")}`
          ) : (
            <span className={styles.rows}>
              {rows.map((row) => (
                <Button
                  key={row}
                  size="small"
                  aria-label={`Show row ${String(numberOf(row))} in the sheet`}
                  onClick={() => {
                    onShow(row);
                  }}
                >
                  row {numberOf(row)}
                </Button>
              ))}
            </span>
          )}
        </>
      )}
    />
  );
}
