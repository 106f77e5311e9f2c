import { generateKeyPairSync, sign } from 'node:crypto';
import { isIP } from 'node:net';
import { AsnConvert, OctetString } from '@peculiar/asn1-schema';
import {
  AlgorithmIdentifier,
  AttributeTypeAndValue,
  AttributeValue,
  BasicConstraints,
  Certificate,
  ExtendedKeyUsage,
  Extension,
  Extensions,
  GeneralName,
  id_ce_basicConstraints,
  id_ce_extKeyUsage,
  id_ce_keyUsage,
  id_ce_subjectAltName,
  id_kp_serverAuth,
  KeyUsage,
  KeyUsageFlags,
  Name,
  RelativeDistinguishedName,
  SubjectAlternativeName,
  SubjectPublicKeyInfo,
  TBSCertificate,
  Validity,
  Version,
} from '@peculiar/asn1-x509';
import type { KeyAndCertificate } from './hall-ports.ts';

export interface CertificateOrder {
  /** Addresses and names that it stands for. */
  readonly names: readonly string[];
  readonly from: Date;
  readonly until: Date;
  readonly random: (bytes: number) => Uint8Array;
}

const commonName = '2.5.4.3';
const ecdsaWithSha256 = '1.2.840.10045.4.3.2';

const bufferOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer;

const extension = (extnID: string, critical: boolean, value: object): Extension =>
  new Extension({ extnID, critical, extnValue: new OctetString(AsnConvert.serialize(value)) });

const pem = (der: ArrayBuffer): string => {
  const lines = Buffer.from(der)
    .toString('base64')
    .match(/.{1,64}/g);
  return `-----BEGIN CERTIFICATE-----\n${(lines ?? []).join('\n')}\n-----END CERTIFICATE-----\n`;
};

/**
 * A key and a certificate that it signed itself, for a server at these addresses and for nothing else: it is no
 * authority, so a device that trusts it trusts nothing that it might sign.
 *
 * Source   RFC 5280, 4.1 and 4.2.1 (fields, alternative names); RFC 5758, 3.2 (ECDSA with SHA-256 on P-256)
 */
export const makeCertificate = ({ names, from, until, random }: CertificateOrder): KeyAndCertificate => {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const self = new Name([
    new RelativeDistinguishedName([
      new AttributeTypeAndValue({
        type: commonName,
        value: new AttributeValue({ utf8String: 'Twinfloor, made on this laptop' }),
      }),
    ]),
  ]);
  const signatureAlgorithm = new AlgorithmIdentifier({ algorithm: ecdsaWithSha256 });
  const tbsCertificate = new TBSCertificate({
    version: Version.v3,
    // a positive number, whatever chance gives: the first byte is 1
    serialNumber: bufferOf(Uint8Array.of(1, ...random(15))),
    signature: signatureAlgorithm,
    issuer: self,
    subject: self,
    validity: new Validity({ notBefore: from, notAfter: until }),
    subjectPublicKeyInfo: AsnConvert.parse(
      bufferOf(publicKey.export({ type: 'spki', format: 'der' })),
      SubjectPublicKeyInfo,
    ),
    extensions: new Extensions([
      extension(id_ce_basicConstraints, true, new BasicConstraints({ cA: false })),
      extension(id_ce_keyUsage, true, new KeyUsage(KeyUsageFlags.digitalSignature)),
      extension(id_ce_extKeyUsage, false, new ExtendedKeyUsage([id_kp_serverAuth])),
      extension(
        id_ce_subjectAltName,
        false,
        new SubjectAlternativeName(
          names.map((name) => new GeneralName(isIP(name) === 0 ? { dNSName: name } : { iPAddress: name })),
        ),
      ),
    ]),
  });
  const signed = sign('sha256', Buffer.from(AsnConvert.serialize(tbsCertificate)), privateKey);
  const certificate = new Certificate({
    tbsCertificate,
    signatureAlgorithm,
    signatureValue: bufferOf(signed),
  });
  return {
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }) as string,
    certificate: pem(AsnConvert.serialize(certificate)),
  };
};
