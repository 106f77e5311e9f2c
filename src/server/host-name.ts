/** Host part of a `Host` header or of an address, lower case, without port and brackets; nothing where it is none. */
export const hostNameOf = (header: string | undefined): string | undefined => {
  const found = /^(?:\[([0-9a-f:.]+)\]|([a-z0-9._-]+))(?::\d{1,5})?$/i.exec(header ?? '');
  return (found?.[1] ?? found?.[2])?.toLowerCase().replace(/\.$/, '');
};

/** Whether a name or address means this machine alone. */
export const isLoopback = (name: string): boolean =>
  name === 'localhost' || name === '::1' || /^127(?:\.\d{1,3}){3}$/.test(name);

/** Whether an address to listen on means every network of this machine. */
export const isEveryAddress = (address: string): boolean => address === '0.0.0.0' || address === '::';

/** Whether an address holds on one cable alone. */
export const isLinkLocal = (address: string): boolean =>
  /^fe[89ab][0-9a-f]:/i.test(address) || /^169\.254(?:\.\d{1,3}){2}$/.test(address);

/** Whether who calls from this address sits at this machine; IPv4 comes as IPv6 where the server listens to both. */
export const isFromHere = (address: string): boolean => isLoopback(address.replace(/^::ffff:/i, ''));
