/**
 * The certificate of the local server. office.js talks only over https, so one is needed even on localhost: the trusted
 * development certificate when somebody has installed it on this machine before, else one of our own, made once and kept
 * in build/. Nothing is ever installed from here.
 */
import { spawnSync } from "node:child_process";
import { createHash, createPublicKey, generateKeyPairSync, randomBytes, sign, X509Certificate } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const KEPT = path.join(root, "build", "certificate");
/** Where the development tools of the add-in platform keep theirs, and the name of the authority that signs it. */
const INSTALLED = path.join(os.homedir(), ".office-addin-dev-certs");
const AUTHORITY = "Developer CA for Microsoft Office Add-ins";
const LINUX_STORE = "/usr/local/share/ca-certificates/office-addin-dev-certs/ca.crt";
const DAY = 86_400_000;
const VALID_DAYS = 365;

/** @returns {{ key: string, cert: string, trusted: boolean, spki: string }} `spki` is the hash by which a browser can be told to accept it. */
export function certificate() {
  const installed = installedCertificate();
  if (installed) return describe(installed, true);
  const own = read(KEPT, "key.pem", "cert.pem");
  if (own && isCurrent(own.cert)) return describe(own, false);
  const made = selfSigned();
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(path.join(KEPT, "key.pem"), made.key, { mode: 0o600 });
  writeFileSync(path.join(KEPT, "cert.pem"), made.cert);
  return describe(made, false);
}

function describe({ key, cert }, trusted) {
  const spki = createPublicKey(cert).export({ type: "spki", format: "der" });
  return { key, cert, trusted, spki: createHash("sha256").update(spki).digest("base64") };
}

function read(folder, keyName, certName) {
  const [key, cert] = [path.join(folder, keyName), path.join(folder, certName)];
  return existsSync(key) && existsSync(cert) ? { key: readFileSync(key, "utf8"), cert: readFileSync(cert, "utf8") } : null;
}

function isCurrent(cert) {
  const { validFrom, validTo } = new X509Certificate(cert);
  return Date.parse(validFrom) <= Date.now() && Date.parse(validTo) > Date.now() + DAY;
}

function installedCertificate() {
  const found = read(INSTALLED, "localhost.key", "localhost.crt");
  return found && isCurrent(found.cert) && isAuthorityTrusted() ? found : null;
}

/** Asks the system's own store; only reads. */
function isAuthorityTrusted() {
  const asks = (program, args) => spawnSync(program, args, { stdio: "ignore", windowsHide: true }).status === 0;
  if (process.platform === "win32")
    return asks("certutil", ["-user", "-verifystore", "Root", AUTHORITY]) || asks("certutil", ["-verifystore", "Root", AUTHORITY]);
  if (process.platform === "darwin") return asks("security", ["find-certificate", "-c", AUTHORITY]);
  return existsSync(LINUX_STORE);
}

// A self-signed certificate, written out in DER (X.690, RFC 5280): Node signs, but does not issue certificates.

const der = (tag, ...parts) => {
  const body = Buffer.concat(parts);
  if (body.length < 128) return Buffer.concat([Buffer.from([tag, body.length]), body]);
  const length = body.length < 256 ? [0x81, body.length] : [0x82, body.length >> 8, body.length & 255];
  return Buffer.concat([Buffer.from([tag, ...length]), body]);
};
const sequence = (...parts) => der(0x30, ...parts);
const objectId = (dotted) => {
  const [first, second, ...rest] = dotted.split(".").map(Number);
  const bytes = [first * 40 + second];
  for (const part of rest) {
    const digits = [part & 127];
    for (let left = part >> 7; left > 0; left >>= 7) digits.unshift((left & 127) | 128);
    bytes.push(...digits);
  }
  return der(0x06, Buffer.from(bytes));
};
const text = (words) => der(0x0c, Buffer.from(words, "utf8"));
const time = (moment) => der(0x18, Buffer.from(`${new Date(moment).toISOString().replace(/[-:T]/g, "").slice(0, 14)}Z`));
const TRUE = der(0x01, Buffer.from([255]));
const extension = (id, critical, value) => sequence(objectId(id), ...(critical ? [TRUE] : []), der(0x04, value));

function selfSigned() {
  const { privateKey, publicKey } = generateKeyPairSync("ec", { namedCurve: "prime256v1" });
  const ecdsaWithSha256 = sequence(objectId("1.2.840.10045.4.3.2"));
  const name = sequence(der(0x31, sequence(objectId("2.5.4.3"), text("localhost"))));
  const serial = randomBytes(12);
  serial[0] = (serial[0] & 0x7f) | 0x40;
  const alternatives = sequence(der(0x82, Buffer.from("localhost")), der(0x87, Buffer.from([127, 0, 0, 1])));
  const extensions = sequence(
    extension("2.5.29.19", true, sequence()),
    extension("2.5.29.15", true, der(0x03, Buffer.from([7, 0x80]))),
    extension("2.5.29.37", false, sequence(objectId("1.3.6.1.5.5.7.3.1"))),
    extension("2.5.29.17", false, alternatives),
  );
  const body = sequence(
    der(0xa0, der(0x02, Buffer.from([2]))),
    der(0x02, serial),
    ecdsaWithSha256,
    name,
    sequence(time(Date.now() - DAY), time(Date.now() + VALID_DAYS * DAY)),
    name,
    publicKey.export({ type: "spki", format: "der" }),
    der(0xa3, extensions),
  );
  const signature = der(0x03, Buffer.from([0]), sign("sha256", body, privateKey));
  const lines = sequence(body, ecdsaWithSha256, signature)
    .toString("base64")
    .match(/.{1,64}/g)
    .join("\n");
  return {
    key: privateKey.export({ type: "pkcs8", format: "pem" }),
    cert: `-----BEGIN CERTIFICATE-----\n${lines}\n-----END CERTIFICATE-----\n`,
  };
}
