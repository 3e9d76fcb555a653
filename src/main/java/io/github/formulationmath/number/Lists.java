package io.github.formulationmath.number;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;

/** Lists made from lists. */
final class Lists {

    private Lists() {}

    static <T> List<T> copies(int count, T each) {
        return Collections.nCopies(count, each);
    }

    static <T> List<T> with(List<T> list, T last) {
        List<T> longer = new ArrayList<>(list);
        longer.add(last);
        return longer;
    }

    static <A, B> List<B> map(List<A> list, Function<A, B> each) {
        return list.stream().map(each).toList();
    }
}
