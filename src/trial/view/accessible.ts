/** Names and roles that the grid's own parts lack, put in as the parts appear. */
export function nameGridParts(container: HTMLElement): void {
  const name = (): void => {
    for (const canvas of container.querySelectorAll("canvas[tabindex='1']")) canvas.setAttribute("tabindex", "-1");
    const address = container.querySelector<HTMLInputElement>("input[type='text']:not([aria-label])");
    if (address) {
      address.setAttribute("aria-label", "Cell address");
      // The list of names beside it belongs to the grid's own names, which the book's are not.
      for (const other of address.parentElement?.querySelectorAll<HTMLElement>("a, button") ?? []) other.style.display = "none";
    }
    const sheets = container.querySelector("[data-u-comp='sheet-bar-append-button']");
    sheets?.setAttribute("aria-label", "All sheets");
    for (const attribute of ["aria-haspopup", "aria-expanded"])
      sheets?.closest("div[data-slot='dropdown-menu-trigger']")?.removeAttribute(attribute);
    const arrow = [...container.querySelectorAll("button:not([aria-label])")].find((button) => button.textContent === "");
    arrow?.setAttribute("aria-label", "Height of the formula bar");
    // Empty notice boards of the grid, all of one name; the page has its own place for messages.
    for (const board of container.ownerDocument.querySelectorAll("section[aria-label^='Notifications']"))
      board.removeAttribute("aria-label");
  };
  new MutationObserver(name).observe(container, { childList: true, subtree: true });
  name();
}
