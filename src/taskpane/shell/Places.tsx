/** The places of the pane: tabs, or a menu where there is no room for tabs. */
import {
  makeStyles,
  Menu,
  MenuButton,
  MenuItemRadio,
  MenuList,
  MenuPopover,
  MenuTrigger,
  Tab,
  TabList,
  tokens,
} from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import { PLACE_NAMES, type PlaceName, PLACES } from "../places";
import { useNarrow } from "../shared/theme";

/** Below this width, in pixels, the tabs become a menu. */
export const TABS_FROM = 470;
const useStyles = makeStyles({
  tabs: { flexShrink: 0, borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  menu: { flexShrink: 0, padding: "6px 8px", borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  button: { width: "100%", justifyContent: "space-between" },
});
interface Props {
  place: PlaceName;
  /** Short counts that stand after a name, such as the number of items. */
  counts: Partial<Record<PlaceName, string>>;
  onGo: (place: PlaceName) => void;
}
export function Places({ place, counts, onGo }: Props) {
  const styles = useStyles();
  const [open, setOpen] = useState(false);
  const list = useRef<HTMLDivElement>(null);
  // The menu itself would stand on its first line.
  useEffect(() => {
    if (open) list.current?.querySelector<HTMLElement>("[aria-checked=true]")?.focus();
  }, [open]);
  const name = (one: PlaceName): string => (counts[one] === undefined ? PLACE_NAMES[one] : `${PLACE_NAMES[one]} (${counts[one]})`);
  if (!useNarrow(TABS_FROM)) {
    return (
      <nav className={styles.tabs} aria-label="Places">
        <TabList
          size="small"
          selectedValue={place}
          onTabSelect={(_, data) => {
            onGo(data.value as PlaceName);
          }}
          aria-label="Places"
        >
          {PLACES.map((one) => (
            <Tab key={one} value={one} aria-controls="place">
              {name(one)}
            </Tab>
          ))}
        </TabList>
      </nav>
    );
  }
  return (
    <nav className={styles.menu} aria-label="Places">
      <Menu
        open={open}
        onOpenChange={(_, data) => {
          setOpen(data.open);
        }}
        checkedValues={{ place: [place] }}
        onCheckedValueChange={(_, data) => {
          onGo(data.checkedItems[0] as PlaceName);
        }}
      >
        <MenuTrigger disableButtonEnhancement>
          <MenuButton className={styles.button}>{name(place)}</MenuButton>
        </MenuTrigger>
        <MenuPopover>
          <div ref={list}>
            <MenuList>
              {PLACES.map((one) => (
                <MenuItemRadio key={one} name="place" value={one}>
                  {name(one)}
                </MenuItemRadio>
              ))}
            </MenuList>
          </div>
        </MenuPopover>
      </Menu>
    </nav>
  );
}
