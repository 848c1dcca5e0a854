/** What the sheet of gear types cannot lend: rows that cannot be read, then types that items name and that lend them nothing. */
import type { Report } from "../../engine/report/model";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { Notice } from "../shared/Notice";

export function TypeNotices({ types }: { types: Report["types"] }) {
  const { refused = [], unmet = [] } = types ?? {};
  return (
    <>
      {refused.length > 0 && (
        <Notice intent="warning" title={`${count(refused.length, "row")} of Gear types cannot be used.`}>
          <CappedList label="Rows of Gear types that cannot be used" entries={refused} render={(row) => row} />
        </Notice>
      )}
      {unmet.length > 0 && (
        <Notice intent="warning" title={unmet.length === 1 ? "One type lends no sizes." : `${String(unmet.length)} types lend no sizes.`}>
          <CappedList label="Types that lend no sizes" entries={unmet} render={(sentence) => sentence} />
        </Notice>
      )}
    </>
  );
}
