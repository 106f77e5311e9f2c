import { createPrivateKey, X509Certificate } from 'node:crypto';
import { isIP } from 'node:net';
import { makeCertificate } from './certificate.ts';
import type { HallPorts, KeyAndCertificate } from './hall-ports.ts';

const day = 24 * 3600_000;
/** Browsers refuse a server's certificate that is made for longer than 398 days. */
const lasts = 397 * day;
/** A certificate that ends while the line is being handed over would be a new fingerprint to compare: renewed before. */
const renewedBefore = 30 * day;
/** A device whose clock is behind must not find it made in the future. */
const backdated = day;

const keyFile = 'key.pem';
const certificateFile = 'certificate.pem';

const parsed = (kept: KeyAndCertificate): X509Certificate | undefined => {
  try {
    const certificate = new X509Certificate(kept.certificate);
    return certificate.checkPrivateKey(createPrivateKey(kept.key)) ? certificate : undefined;
  } catch {
    // cut short, written by somebody else, or the key of another certificate: a new pair takes its place
    return undefined;
  }
};

const standsFor = (certificate: X509Certificate, name: string): boolean =>
  (isIP(name) === 0 ? certificate.checkHost(name, { subject: 'never' }) : certificate.checkIP(name)) !==
  undefined;

/** What is to be compared on the device's screen: SHA-256 over the certificate, in pairs. */
export const fingerprintOf = (certificate: string): string => new X509Certificate(certificate).fingerprint256;

/** The key and certificate of this machine: those that are kept, or new ones where an address or the time is another. */
export const keptCertificate = async (ports: HallPorts): Promise<KeyAndCertificate> => {
  const { files, clock, networks, random } = ports;
  const names = [...new Set([...networks().map(({ address }) => address), ...ports.names])];
  const [key, certificate] = [await files.read(keyFile), await files.read(certificateFile)];
  const now = clock();
  if (key !== undefined && certificate !== undefined) {
    const kept = { key, certificate };
    const read = parsed(kept);
    const lives =
      read !== undefined &&
      Date.parse(read.validFrom) <= now &&
      Date.parse(read.validTo) - now >= renewedBefore &&
      names.every((name) => standsFor(read, name));
    if (lives) return kept;
  }
  const made = makeCertificate({
    names,
    from: new Date(now - backdated),
    until: new Date(now - backdated + lasts),
    random,
  });
  await files.write(keyFile, made.key);
  await files.write(certificateFile, made.certificate);
  return made;
};
