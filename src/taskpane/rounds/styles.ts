/** Looks that the parts of Rounds share. */
import { makeStyles, tokens } from "@fluentui/react-components";

export const useRoundStyles = makeStyles({
  card: { display: "flex", flexDirection: "column", gap: "14px", padding: "0 12px 12px" },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  hint: {
    flex: "1 1 130px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
  text: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, overflowWrap: "anywhere" },
  quiet: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
    overflowWrap: "anywhere",
  },
  select: { flexGrow: 1, minWidth: 0 },
  seal: { fontFamily: tokens.fontFamilyMonospace, overflowWrap: "anywhere" },
});
