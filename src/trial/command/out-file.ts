/** The workbook that `--out` names: never the input, replaced only when that was asked for, and whole or as it was before. */
import { constants } from "node:fs";
import { access, link, open, realpath, rename, stat, unlink } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { Refusal } from "./refusal";

export interface OutFile {
  /** As it was typed, for sentences. */
  readonly name: string;
  /** Where the bytes go: behind a link, the file it leads to. */
  readonly path: string;
  readonly replaces: boolean;
}
/** What the system says in a word, in a sentence's part. */
const FAULTS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EDQUOT: "the disk's quota is used up",
  EFBIG: "the file would be larger than it may be here",
  EACCES: "this account may not write there",
  EPERM: "this account may not write there",
  EROFS: "that place can only be read",
  ENOENT: "its folder is not there",
  ENOTDIR: "its folder is not there",
  EISDIR: "that is a folder",
  EBUSY: "another program holds it",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "the link leads to itself",
  EIO: "the disk reports a fault",
  EMFILE: "too many files are open",
};
export function faultWords(fault: unknown): string {
  const code = (fault as NodeJS.ErrnoException).code ?? "";
  return FAULTS[code] ?? `the system says ${code === "" ? String(fault) : code}`;
}
/** Refuses, before anything is judged, a place that can't be written. Files are told apart by what they are, not by their names. */
export async function outFile(input: string, out: string, name: string, force: boolean): Promise<OutFile> {
  const cannot = (why: string): Refusal => new Refusal(1, `${name} cannot be written: ${why}.`);
  const path = await realpath(out).catch((fault: unknown) => {
    if ((fault as NodeJS.ErrnoException).code === "ENOENT") return out;
    throw cannot(faultWords(fault));
  });
  const there = await stat(path, { bigint: true }).catch(() => null);
  if (there?.isDirectory()) throw cannot("that is a folder");
  if (there && !there.isFile()) throw cannot("that is no file");
  const source = await stat(input, { bigint: true }).catch(() => null);
  if (there?.dev === source?.dev && there?.ino === source?.ino && there !== null)
    throw new Refusal(2, "--out must be another file than the input, which is never changed.");
  if (there && !force) throw new Refusal(2, `${name} is there already; add --force to replace it.`);
  const folder = dirname(path);
  const inside = await stat(folder).catch((fault: unknown) => {
    throw cannot(faultWords(fault));
  });
  if (!inside.isDirectory()) throw cannot("its folder is not there");
  await access(folder, constants.W_OK).catch((fault: unknown) => {
    throw cannot(faultWords(fault));
  });
  return { name, path, replaces: there !== null };
}
/** Writes beside and renames, so that the old file stands whole until the new one does. */
export async function writeOut({ name, path, replaces }: OutFile, bytes: Uint8Array): Promise<void> {
  const beside = join(dirname(path), `.${basename(path).slice(0, 60)}.${String(process.pid)}.part`);
  try {
    const file = await open(beside, "wx");
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    if (replaces) await rename(beside, path);
    else await putNew(beside, path, name);
  } catch (fault) {
    await unlink(beside).catch(() => undefined);
    if (fault instanceof Refusal) throw fault;
    const kept = replaces ? "the file that was there is as it was" : "nothing was written";
    throw new Refusal(1, `${name} could not be written: ${faultWords(fault)}; ${kept}.`);
  }
}
/** A link refuses a name that was taken meanwhile, which a rename would replace. */
async function putNew(beside: string, path: string, name: string): Promise<void> {
  try {
    await link(beside, path);
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === "EEXIST")
      throw new Refusal(1, `${name} was made by another program meanwhile; it is as it was.`);
    // File systems without links.
    await rename(beside, path);
    return;
  }
  await unlink(beside);
}
