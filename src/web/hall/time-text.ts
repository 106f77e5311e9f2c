/** A moment of the last days, as one says it at the machine: day and minute by the locale. */
export const timeText = (moment: string, locale: string): string =>
  new Intl.DateTimeFormat(locale === 'qps' ? 'en' : locale, {
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(moment));
