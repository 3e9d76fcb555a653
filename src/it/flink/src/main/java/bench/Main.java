package bench;

import java.util.BitSet;
import org.apache.flink.api.common.functions.MapFunction;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;

/** Runs the job over many formulas on the engine, two tasks side by side, and compares each result with the plain loop's. */
public final class Main {

    private Main() {}

    /** The user function: a value of the library's types, sent to the tasks in serialized form. */
    private static final class PlanAndCheck implements MapFunction<String, String> {

        private static final long serialVersionUID = 1L;

        private final Job job = new Job();

        @Override
        public String map(String written) {
            return job.result(written);
        }
    }

    public static void main(String[] args) throws Exception {
        int count = Integer.parseInt(args[0]);
        StreamExecutionEnvironment engine = StreamExecutionEnvironment.createLocalEnvironment(2);
        BitSet seen = new BitSet(count);
        Job plain = new Job();
        try (CloseableIterator<String> results = engine.fromSequence(0, count - 1)
                .map((MapFunction<Long, String>) Job::write)
                .returns(String.class)
                .rebalance()
                .map(new PlanAndCheck())
                .executeAndCollect("plans and limits")) {
            while (results.hasNext()) {
                String result = results.next();
                int number = Integer.parseInt(result.substring(0, result.indexOf(' ')));
                if (seen.get(number)) {
                    throw new IllegalStateException("twice: " + number);
                }
                seen.set(number);
                String expected = plain.result(Job.write(number));
                if (!expected.equals(result)) {
                    throw new IllegalStateException("engine: " + result + "\nloop:   " + expected);
                }
            }
        }
        System.out.println(plain.result(Job.write(0)));
        System.out.println(seen.cardinality() + " formulas, every result the same as the plain loop's");
    }
}
