/** The page's elements by id; a missing one is a mistake in index.html and said so. */
export function element<T extends HTMLElement>(id: string, kind: new () => T): T {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${kind.name} with the id ${id}.`);
  return found;
}
