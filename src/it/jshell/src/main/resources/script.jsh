// Into a file of its own: what the JVM or JShell itself says on a machine is no part of the output.
System.setOut(new PrintStream(System.getProperty("output.file"), "UTF-8"))

int failures = 0;
void expect(Object expected, Object found) { if (!expected.toString().equals(found.toString())) { failures++; System.out.println("expected " + expected + ", found " + found); } }

System.out.println(lotion)
System.out.println(plan.line("Glycerin").reading())
why(plan.line("Glycerin").target())
var small = WeighingPlan.of(Batch.of(lotion, BatchSize.ofMass("20 g")), balance)
System.out.println(small.line("Glycerin").reading())
expect("0.7 g", small.line("Glycerin").reading())
expect("1/3", Ratio.of(1, 3))
System.out.println("failures: " + failures)
/exit failures
