/** The parts of a workbook file, which is a zip archive: read, and written again with some parts changed. */

export const NOT_A_WORKBOOK =
  "This file is not an .xlsx workbook, or it is damaged or cut short: open it in the program it came from and save it again as .xlsx.";
export const LOCKED_WORKBOOK =
  "This file is protected by a password or is in the old .xls format: save it as an unprotected .xlsx workbook.";
/** No part may come to more than this when it is unpacked, and no workbook's parts together to more than that. */
export const LARGEST_PART = 290_000_000;
const LARGEST_WHOLE = 580_000_000;
const MOST_PARTS = 20_000;
export const TOO_LARGE =
  "This workbook is too large to be read here: a part of it unpacks to more than 290 MB. Copy the sheet with the log into a workbook of its own, without what stands far from it, and take that one.";
interface Part {
  name: string;
  /** 0 stored, 8 deflated. */
  method: number;
  crc: number;
  size: number;
  packed: Uint8Array<ArrayBuffer>;
}
const LOCAL_HEADER = 0x04034b50,
  DIRECTORY_ENTRY = 0x02014b50,
  END_OF_DIRECTORY = 0x06054b50;
/** First bytes of the container of encrypted workbooks and of .xls. */
const COMPOUND_FILE = [0xd0, 0xcf, 0x11, 0xe0];
export class Archive {
  private readonly parts: Map<string, Part>;
  /** What was unpacked so far. */
  private unpacked = 0;
  /** True for a file that was written here, which may be of any size. */
  private readonly own: boolean;

  private constructor(parts: Part[], own: boolean) {
    this.parts = new Map(parts.map((part) => [part.name, part]));
    this.own = own;
  }

  /** Throws one sentence when the bytes are no whole archive. */
  static read(bytes: Uint8Array, own = false): Archive {
    if (COMPOUND_FILE.every((byte, at) => bytes[at] === byte)) throw new Error(LOCKED_WORKBOOK);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const end = endOfDirectory(view);
    if (end < 0 || view.getUint32(0, true) !== LOCAL_HEADER) throw new Error(NOT_A_WORKBOOK);
    if (view.getUint16(end + 10, true) > MOST_PARTS) throw new Error(TOO_LARGE);
    const parts: Part[] = [];
    let at = view.getUint32(end + 16, true);
    for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
      if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY_ENTRY) throw new Error(NOT_A_WORKBOOK);
      const packedSize = view.getUint32(at + 20, true),
        nameLength = view.getUint16(at + 28, true);
      const local = view.getUint32(at + 42, true);
      if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL_HEADER) throw new Error(NOT_A_WORKBOOK);
      const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
      if (start + packedSize > bytes.length) throw new Error(NOT_A_WORKBOOK);
      parts.push({
        name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)).replace(/\\/g, "/"),
        method: view.getUint16(at + 10, true),
        crc: view.getUint32(at + 16, true),
        size: view.getUint32(at + 24, true),
        packed: bytes.slice(start, start + packedSize),
      });
      at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    }
    return new Archive(parts, own);
  }

  names(): string[] {
    return [...this.parts.keys()];
  }

  /** An archive of these parts alone, packed as they are. */
  only(wanted: (name: string) => boolean): Archive {
    return new Archive(
      [...this.parts.values()].filter(({ name }) => wanted(name)),
      this.own,
    );
  }

  /** The text of a part; null when there is none of that name. */
  async text(name: string): Promise<string | null> {
    const pieces = this.pieces(name);
    if (!pieces) return null;
    let text = "";
    for await (const piece of pieces) text += piece;
    return text;
  }

  /** The text of a part, piece by piece; null when there is none of that name. Stops with one sentence where it grows too large. */
  pieces(name: string): AsyncGenerator<string> | null {
    const part = this.parts.get(name);
    return part ? this.unpack(part) : null;
  }

  private async *unpack(part: Part): AsyncGenerator<string> {
    // What a part says of its size may be untrue: it is counted again while it unpacks.
    if (part.size > LARGEST_PART && !this.own) throw new Error(TOO_LARGE);
    const decoder = new TextDecoder();
    let size = 0;
    let crc = CRC_START;
    try {
      for await (const bytes of part.method === 0 ? [part.packed] : chunks(part.packed)) {
        size += bytes.length;
        this.unpacked += bytes.length;
        if (!this.own && (size > LARGEST_PART || this.unpacked > LARGEST_WHOLE)) throw new Error(TOO_LARGE);
        crc = crcOver(crc, bytes);
        yield decoder.decode(bytes, { stream: true });
      }
    } catch (fault) {
      if (fault instanceof Error && fault.message === TOO_LARGE) throw fault;
      throw new Error(NOT_A_WORKBOOK, { cause: fault });
    }
    if (crcEnd(crc) !== part.crc) throw new Error(NOT_A_WORKBOOK);
    yield decoder.decode();
  }

  async replace(name: string, text: string): Promise<void> {
    const plain = new TextEncoder().encode(text);
    this.parts.set(name, {
      name,
      method: 8,
      crc: crcOf(plain),
      size: plain.length,
      packed: await pumped(plain, new CompressionStream("deflate-raw")),
    });
  }

  /** Changes a part while it goes by: it is never held as a whole. */
  async rewrite(name: string, change: (pieces: AsyncIterable<string>) => AsyncIterable<string>): Promise<void> {
    const pieces = this.pieces(name);
    if (!pieces) throw new Error(`The file has no part ${name}.`);
    const encoder = new TextEncoder();
    const packing = new CompressionStream("deflate-raw");
    const packed = new Response(packing.readable).arrayBuffer();
    const writer = packing.writable.getWriter();
    let crc = CRC_START;
    let size = 0;
    try {
      for await (const piece of change(pieces)) {
        const bytes = encoder.encode(piece);
        crc = crcOver(crc, bytes);
        size += bytes.length;
        await writer.write(bytes);
      }
      await writer.close();
    } catch (fault) {
      // The failure is told once; what was packed so far is given up.
      packed.catch(() => undefined);
      await writer.abort(fault).catch(() => undefined);
      throw fault;
    }
    this.parts.set(name, { name, method: 8, crc: crcEnd(crc), size, packed: new Uint8Array(await packed) });
  }

  write(): Uint8Array {
    const encoder = new TextEncoder();
    const pieces: Uint8Array[] = [],
      directory: Uint8Array[] = [];
    let offset = 0;
    for (const part of this.parts.values()) {
      const name = encoder.encode(part.name);
      const local = header(30, [
        [0, LOCAL_HEADER, 4],
        [4, 20, 2],
        [6, 0x800, 2],
        [8, part.method, 2],
        [12, 0x21, 2],
        [14, part.crc, 4],
        [18, part.packed.length, 4],
        [22, part.size, 4],
        [26, name.length, 2],
      ]);
      directory.push(
        header(46, [
          [0, DIRECTORY_ENTRY, 4],
          [4, 20, 2],
          [6, 20, 2],
          [8, 0x800, 2],
          [10, part.method, 2],
          [14, 0x21, 2],
          [16, part.crc, 4],
          [20, part.packed.length, 4],
          [24, part.size, 4],
          [28, name.length, 2],
          [42, offset, 4],
        ]),
        name,
      );
      pieces.push(local, name, part.packed);
      offset += local.length + name.length + part.packed.length;
    }
    const size = lengthOf(directory);
    const end = header(22, [
      [0, END_OF_DIRECTORY, 4],
      [8, this.parts.size, 2],
      [10, this.parts.size, 2],
      [12, size, 4],
      [16, offset, 4],
    ]);
    return joined([...pieces, ...directory, end]);
  }
}
function endOfDirectory(view: DataView): number {
  // A comment of up to 65,535 bytes may follow.
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 65_535); at -= 1) {
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  }
  return -1;
}
function header(length: number, fields: readonly [at: number, value: number, bytes: 2 | 4][]): Uint8Array {
  const view = new DataView(new ArrayBuffer(length));
  for (const [at, value, bytes] of fields) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
  }
  return new Uint8Array(view.buffer);
}
async function* chunks(packed: Uint8Array<ArrayBuffer>): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    // A reader that stops early has no more use for the rest.
    await reader.cancel().catch(() => undefined);
  }
}
async function pumped(bytes: Uint8Array<ArrayBuffer>, through: CompressionStream | DecompressionStream): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(through);
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, piece) => sum + piece.length, 0);
}
function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(lengthOf(pieces));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value >>> 0;
});
const CRC_START = 0xffffffff;
function crcOver(before: number, bytes: Uint8Array): number {
  let crc = before;
  for (const byte of bytes) crc = (CRC_TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return crc;
}
function crcEnd(crc: number): number {
  return (crc ^ 0xffffffff) >>> 0;
}
function crcOf(bytes: Uint8Array): number {
  return crcEnd(crcOver(CRC_START, bytes));
}
