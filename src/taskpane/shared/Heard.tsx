/** Text for people who listen: it is read aloud and takes no room. */
import { makeStyles } from "@fluentui/react-components";
import type { ReactNode } from "react";

const useStyles = makeStyles({
  heard: { position: "absolute", width: "1px", height: "1px", overflow: "hidden", clipPath: "inset(50%)", whiteSpace: "nowrap" },
});
export function Heard({ children }: { children: ReactNode }) {
  return <span className={useStyles().heard}>{children}</span>;
}
