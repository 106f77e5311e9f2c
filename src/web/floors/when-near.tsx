import { type ReactElement, type ReactNode, useEffect, useRef, useState } from 'react';

/** Shows its content once it comes near the window, and from then on. */
export const WhenNear = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const ref = useRef<HTMLDivElement>(null);
  const [near, setNear] = useState(false);
  useEffect(() => {
    const host = ref.current;
    if (near || host === null) return undefined;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) setNear(true);
      },
      { rootMargin: '400px' },
    );
    observer.observe(host);
    return () => observer.disconnect();
  }, [near]);
  return (
    <div ref={ref} className="when-near">
      {near && children}
    </div>
  );
};
