import { useLayoutEffect, useRef, useState, type RefObject } from "react";

/** The width of an element in CSS px, kept up to date, so that a drawing's text keeps its size on every screen. */
export function useWidth<E extends HTMLElement>(start: number): readonly [RefObject<E | null>, number] {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(start);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const measure = (): void => {
      if (element.clientWidth > 0) setWidth(element.clientWidth);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}
