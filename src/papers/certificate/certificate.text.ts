import type { Bundle } from '../../text/index.ts';

/** Words of the certificate. */
export const certificateText: Bundle = {
  en: {
    'certificate.title': 'Certificate',
    'certificate.of': 'Certificate, {floor}: {gate}',
    'certificate.foot':
      'What was recorded up to the printing of this paper. It releases no machine; the local code and licensed people do.',
    'certificate.builder': 'the builder',
    'certificate.customer': 'the customer',
    'certificate.declared':
      '{builder} hands the line over to {customer} at {floor}. Both have seen what was proved, what was shown only, and every point that stays open below. What is not named here was not agreed to stay open.',
    'certificate.caution':
      'A signature passes a gate only where every open point stands by its name. Safeguarding, electrical, pressure and hygiene duties of the operator stay with the operator, by the local code.',
    'certificate.agreed': 'Agreed',
    'certificate.rate': 'rate, {format}',
    'certificate.run': 'acceptance run',
    'certificate.conceded': 'Accepted as it is',
    'certificate.open': 'Stays open, by name',
    'certificate.open.none': 'Nothing is open by the records.',
    'certificate.open.what': 'what',
    'certificate.open.holder': 'held by',
    'certificate.signed': 'Signed with a key',
    'certificate.signed.none': 'Nobody has signed with a key yet.',
    'certificate.whole': '{role}; every open point named',
    'certificate.part': '{role}; not everything that is open now is named',
    'certificate.sign': 'Signed by hand',
    'certificate.sign.builder': 'for the builder',
    'certificate.sign.site': 'for the site',
    'certificate.sign.name': 'name, role',
    'certificate.sign.signature': 'signature',
    'certificate.sign.day': 'day',
    'certificate.heads': 'Last record of each device',
    'certificate.heads.why':
      'Whoever keeps these digests can tell later whether a record before them was changed, dropped or cut off.',
  },
};
