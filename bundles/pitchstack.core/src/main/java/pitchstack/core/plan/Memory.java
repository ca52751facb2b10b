// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** Counts roughly what memory a plan takes, and ends it with a sentence where that is too much. */
final class Memory {
    private static final long MEGABYTE = 1L << 20;

    private final SequenceRequest request;
    private long taken;

    Memory(SequenceRequest request) {
        this.request = request;
    }

    long taken() {
        return taken;
    }

    /** How many things of a size there is still room for. */
    int roomFor(long bytesEach) {
        return (int) Math.min(Integer.MAX_VALUE - 1, Math.max(0, request.memoryBytes() - taken) / bytesEach);
    }

    void take(long bytes) {
        taken += bytes;
        if (taken > request.memoryBytes()) {
            refuse("The " + request.stops().size() + " stops can be combined in too many ways to compare them in ",
                    "allow smaller tolerances");
        }
    }

    void giveBackTo(long earlier) {
        taken = earlier;
    }

    /**
     * Ends the planning.
     *
     * @param what a sentence that goes on with the memory allowed
     * @param wayOut what else than the memory can be changed
     */
    void refuse(String what, String wayOut) {
        String allowed = request.memoryBytes() >= MEGABYTE ? request.memoryBytes() / MEGABYTE + " MB"
                : request.memoryBytes() + " bytes";
        throw new EndedEarly(new SequenceAnswer.Refused(what + allowed + " of memory; " + wayOut
                + ", allow more memory, or plan the stops one by one."));
    }
}
