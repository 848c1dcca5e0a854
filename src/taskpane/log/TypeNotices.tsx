/** Rows of the sheet of gear types that cannot be read: they stand first, since items wait for them. */
import type { Report } from "../../engine/report/model";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { Notice } from "../shared/Notice";

export function TypeNotices({ types }: { types: Report["types"] }) {
  const { refused = [] } = types ?? {};
  if (refused.length === 0) return null;
  return (
    <Notice intent="warning" title={`${count(refused.length, "row")} of Gear types cannot be used.`}>
      <CappedList label="Rows of Gear types that cannot be used" entries={refused} render={(row) => row} />
    </Notice>
  );
}
