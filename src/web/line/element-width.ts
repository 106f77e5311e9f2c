import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element as it changes; `first` until it is measured. */
export const useElementWidth = <E extends HTMLElement>(first: number): [RefObject<E | null>, number] => {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    setWidth(element.clientWidth);
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
};
