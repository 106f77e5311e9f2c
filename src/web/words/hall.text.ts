import type { Bundle } from '../../text/index.ts';

/** Words of the page on which the hall is opened. */
export const hallWords: Bundle = {
  en: {
    'hall.title': 'Join a phone or a tablet',
    'hall.shut':
      'Nothing of this laptop can be reached from the hall now. Open it for as long as you need it; it shuts with the program.',
    'hall.none':
      'This laptop is in no network. Join the network of the hall, or let the phone make one, and look here again.',
    'hall.address': 'Address of this laptop in the network of the hall',
    'hall.address.of': '{address} ({name})',
    'hall.port': 'Port',
    'hall.way': 'How the devices are reached',
    'hall.way.tls': 'encrypted, by a certificate that this laptop makes itself',
    'hall.way.plain': 'not encrypted, for a device that takes no such certificate',
    'hall.way.plain.about':
      'Who is in the same network can then read along, and act in the place of a device. On the device the browser gives the page no camera and no key to sign with: photographs are chosen from those that it took itself, and signing is done at the laptop. The code is typed or read as ever.',
    'hall.open': 'Open the hall',
    'hall.close': 'Close the hall',
    'hall.is': 'The hall is open at {url}',
    'hall.gone':
      'This laptop no longer has the address {address}: it is in another network now. Close the hall and open it by the address that it has.',
    'hall.steps': 'On the phone or tablet',
    'hall.step.network': 'Join the same network as this laptop.',
    'hall.step.read': 'Point its camera at the picture, or type the address {url} and the code.',
    'hall.step.doubt':
      'Its browser says that the connection is not private or the certificate not known. That is so because this laptop made the certificate itself and nobody else vouches for it.',
    'hall.step.compare':
      'Open the details of the certificate and compare its SHA-256 fingerprint with this one. If it is the same, go on to the page; if it is another, somebody stands between: go no further.',
    'hall.step.compare.where':
      'Browsers differ in where they show it: behind the mark before the address, or behind “Details” in the warning. A browser that shows none can’t be checked in this way.',
    'hall.fingerprint': 'SHA-256 fingerprint',
    'hall.step.name': 'Type the code if it is not there yet, say what the device is called, and join.',
    'hall.step.lost':
      'If nothing comes up: the firewall of this laptop may ask whether to let devices in, and a guest network often keeps devices apart.',
    'hall.code': 'Code',
    'hall.code.until': 'for one device, until {time}',
    'hall.code.renew': 'Another code',
    'hall.picture': 'Picture of the address with the code, to be read by a camera',
    'hall.over.used': 'The code was used. The next device wants another one.',
    'hall.over.late': 'The code ran out.',
    'hall.over.guessed': 'The code was taken back: too many wrong ones were sent.',
    'hall.wrong':
      '{n, plural, one {One wrong code was} other {# wrong codes were}} sent since this one was made.',
    'hall.devices': 'Joined devices',
    'hall.devices.none': 'None has joined.',
    'hall.device.plain': 'not encrypted',
    'hall.device.joined': 'joined {time}',
    'hall.device.seen': 'here {time}',
    'hall.device.remove': 'Remove',
    'hall.device.remove.name': 'Remove {name}',
    'hall.onDevice': 'This device has joined the laptop as “{name}”.',
    'hall.onDevice.about': 'The hall is opened, closed and looked after on the laptop itself.',
    'hall.looking': 'Asking the laptop.',
    'hall.unreachable': 'The server does not answer.',
  },
};
